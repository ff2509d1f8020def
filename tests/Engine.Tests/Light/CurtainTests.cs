using Runnel.Engine.Light;

namespace Runnel.Engine.Tests.Light;

/// <summary>White curtains, against single photons traced until they are swallowed or leave.</summary>
public class CurtainTests
{
    private const int Photons = 60_000;

    [Theory]
    [InlineData(1.2, 0.6, 0.3, 80, 1)]
    [InlineData(1.2, 0.6, 0.6, 80, 1)]
    [InlineData(1.2, 0.6, 0.4, 90, 4)]
    [InlineData(1.0, 1.0, 0.5, 85, 4)]
    [InlineData(1.0, 1.0, 1.0, 90, 1)]
    [InlineData(2.4, 1.2, 0.4, 80, 8)]
    [InlineData(0.6, 0.6, 0.4, 90, 4)]
    [InlineData(3.0, 0.5, 0.25, 75, 6)]
    [Proof("share-with-curtains", Evidence.Derived, "single photons traced between matt walls (seeded): the rule lies within 2 points of them")]
    public void Single_photons_end_where_the_rule_says(double length, double width, double height, double reflectance, int lamps)
    {
        var bed = new BedOutline(length, width);
        var scene = new LightScene(bed, LampPlacement.Even(bed, lamps), height, new SpotEmitter(), 10, new Curtains(reflectance));
        var map = LightMap.Of(scene);
        var (direct, share) = Trace(scene);
        // One standard error of the traced share is 0.2 points.
        Assert.Equal(direct, map.Direct, 0.01);
        Assert.Equal(share, map.Share, 0.02);
        Assert.Equal(map.Share, Curtains.Share(100 * map.Direct, reflectance, length, width, height) / 100, 0.002);
    }

    [Fact]
    public void In_a_shaft_the_rule_promises_too_much_and_says_that_it_does_not_hold()
    {
        var bed = new BedOutline(0.6, 0.6);
        var scene = new LightScene(bed, LampPlacement.Even(bed, 4), 1, new SpotEmitter(), 10, new Curtains(90));
        Assert.InRange(LightMap.Of(scene).Share - Trace(scene).Share, 0.05, 0.12);
        Assert.False(Curtains.Hold(bed, 1));
        Assert.True(Curtains.Hold(bed, 0.4));
    }

    [Fact]
    [Proof("share-with-curtains", Evidence.Derived, "black curtains add nothing; perfect ones over a lid of lamps lose only what leaves at the top; a shaft loses nearly all")]
    public void Limits_of_curtains()
    {
        Assert.Equal(40, Curtains.Share(40, 0, 1, 1, 1), 12);
        Assert.Equal(100, Curtains.Share(100, 80, 1, 1, 1), 12);
        // Walls that swallow nothing send as much to the bed as out at the top.
        Assert.Equal(70, Curtains.Share(40, 98, 1, 1, 1), 2.0);
        Assert.InRange(Curtains.Share(0, 50, 0.1, 0.1, 10), 0, 2);
    }

    private static (double Direct, double Share) Trace(LightScene scene)
    {
        var random = new Random(20261123);
        var (length, width, height) = (scene.Bed.Length, scene.Bed.Width, scene.Height);
        var (direct, arrived) = (0, 0);
        for (var i = 0; i < Photons; i++)
        {
            var lamp = scene.Lamps[i % scene.Lamps.Count];
            var (x, y, z) = (lamp.X, lamp.Y, height);
            var (dx, dy, dz) = Cosine(random);
            dz = -dz;
            for (var bounce = 0; ; bounce++)
            {
                // The nearest of floor, top and four walls along the way.
                var toLevel = dz < 0 ? -z / dz : dz > 0 ? (height - z) / dz : double.PositiveInfinity;
                var toX = dx < 0 ? -x / dx : dx > 0 ? (length - x) / dx : double.PositiveInfinity;
                var toY = dy < 0 ? -y / dy : dy > 0 ? (width - y) / dy : double.PositiveInfinity;
                if (toLevel <= toX && toLevel <= toY)
                {
                    if (dz < 0)
                    {
                        arrived++;
                        direct += bounce == 0 ? 1 : 0;
                    }
                    break;
                }
                if (random.NextDouble() >= scene.Curtains!.Reflectance / 100)
                {
                    break;
                }
                var step = Math.Min(toX, toY);
                (x, y, z) = (Math.Clamp(x + step * dx, 0, length), Math.Clamp(y + step * dy, 0, width), z + step * dz);
                var (a, b, c) = Cosine(random);
                (dx, dy, dz) = toX < toY
                    ? (dx > 0 ? -c : c, a, b)
                    : (a, dy > 0 ? -c : c, b);
            }
        }
        return ((double)direct / Photons, (double)arrived / Photons);
    }

    // A direction from a matt surface whose normal is the third axis.
    private static (double X, double Y, double Z) Cosine(Random random)
    {
        var (r, turn) = (Math.Sqrt(random.NextDouble()), 2 * Math.PI * random.NextDouble());
        return (r * Math.Cos(turn), r * Math.Sin(turn), Math.Sqrt(1 - r * r));
    }
}
