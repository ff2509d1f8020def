using CsCheck;
using MathNet.Numerics.Integration;
using Runnel.Engine.Light;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Light;

/// <summary>Lamps over a bed: no photon is made, symmetry stays, closed forms and single photons agree.</summary>
public class LightMapTests
{
    private static readonly IntensityTable Matt = new([0, 15, 30, 45, 60, 75, 90], [0], [100, 96.593, 86.603, 70.711, 50, 25.882, 0]);

    private static readonly Gen<Emitter> Emitters = Gen.OneOf<Emitter>(
        Gen.Double[30, 160].Select(b => (Emitter)new SpotEmitter(b)),
        Gen.Const((Emitter)new BulbEmitter()),
        Gen.Double[0.02, 0.5].Select(r => (Emitter)new DiscEmitter(r)),
        Gen.Double[0.05, 1.5].Select(l => (Emitter)new StripEmitter(l)),
        Gen.Double[0.05, 1.5].Select(l => (Emitter)new TubeEmitter(l)),
        Gen.Select(Gen.Double[0.05, 1.2], Gen.Double[0.05, 0.6], (l, w) => (Emitter)new PanelEmitter(l, w)),
        Gen.Const((Emitter)new TableEmitter(Matt)));

    private static readonly Gen<Curtains?> MaybeCurtains =
        Gen.OneOf(Gen.Const((Curtains?)null), Gen.Double[0, 98].Select(r => (Curtains?)new Curtains(r)));

    private static readonly Gen<BedOutline> Beds = Gen.Select(Gen.Double[0.3, 3], Gen.Double[0.3, 2], (l, w) => new BedOutline(l, w));

    [Fact]
    public void No_more_photons_arrive_than_are_given_off() =>
        Gen.Select(Beds, Gen.Int[1, 12], Gen.Double[0.05, 2], Emitters, MaybeCurtains).Sample((bed, count, height, emitter, curtains) =>
        {
            var map = LightMap.Of(new(bed, LampPlacement.Even(bed, count), height, emitter, 20, curtains), 12, 12);
            Assert.InRange(map.Share, 0, emitter.Downward * 1.005);
            Assert.InRange(map.Share, map.Direct, 1.005);
            Assert.Equal(map.Share * 20 * count, map.Mean * bed.Area, 1e-9 * 20 * count);
            Assert.InRange(map.Evenness, 0, 1);
            Assert.True(map.Least <= map.Mean && map.Mean <= map.Greatest);
        }, iter: 300);

    [Fact]
    public void On_an_endless_bed_all_arrive_that_go_down() =>
        Emitters.Sample(emitter =>
        {
            var bed = new BedOutline(100, 100);
            var map = LightMap.Of(new(bed, [new(50, 50)], 1, emitter, 1), 20, 20);
            // What leaves within a degree of level misses a bed of 100 heights: 2 % of a bulb's light, next to none of a matt lamp's.
            var level = emitter is BulbEmitter or TubeEmitter ? 0.015 : emitter is SpotEmitter { Beam: > 140 } ? 0.03 : 0.002;
            Assert.Equal(emitter.Downward, map.Share, level);
        }, iter: 14);

    [Fact]
    [Proof("share-of-one-lamp", Evidence.Derived, "sum over the bed of the light that a small matt lamp throws on it, by the general-purpose library MathNet; and the map's own sum")]
    public void One_small_matt_lamp_over_the_middle() =>
        Gen.Select(Beds, Gen.Double[0.1, 2]).Sample((bed, height) =>
        {
            var closed = Reaching.OfOne(bed.Length, bed.Width, height) / 100;
            var sum = 4 * GaussLegendreRule.Integrate((x, y) => PointSource.CosineLamp(PointSource.CosineIntensity, height, Math.Sqrt(x * x + y * y)),
                0, bed.Length / 2, 0, bed.Width / 2, 128);
            Assert.Equal(sum, closed, 1e-6);
            Assert.Equal(closed, LightMap.Of(new(bed, LampPlacement.Even(bed, 1), height, new SpotEmitter(), 1)).Share, 0.002);
        }, iter: 100);

    [Fact]
    public void A_panel_as_large_as_the_bed_gives_it_the_view_factor_of_facing_rectangles() =>
        Gen.Select(Beds, Gen.Double[0.1, 2]).Sample((bed, height) =>
        {
            var scene = new LightScene(bed, LampPlacement.Even(bed, 1), height, new PanelEmitter(bed.Length, bed.Width), 1);
            Assert.Equal(DiffuseRectangle.Facing(bed.Length, bed.Width, height), LightMap.Of(scene).Share, 0.002);
        }, iter: 100);

    [Fact]
    public void A_bare_bulb_gives_a_bed_its_solid_angle() =>
        Gen.Select(Beds, Gen.Double[0.1, 2]).Sample((bed, height) =>
        {
            var (a, b) = (bed.Length / 2, bed.Width / 2);
            var share = 4 * Math.Atan(a * b / (height * Math.Sqrt(a * a + b * b + height * height))) / (4 * Math.PI);
            Assert.Equal(share, LightMap.Of(new(bed, LampPlacement.Even(bed, 1), height, new BulbEmitter(), 1)).Share, 0.002);
        }, iter: 100);

    [Fact]
    public void A_point_at_twice_the_height_gives_a_quarter_straight_below()
    {
        var bed = new BedOutline(0.05, 0.05);
        double At(double height) => LightMap.Of(new(bed, [new(0.025, 0.025)], height, new SpotEmitter(), 100), 1, 1).Mean;
        Assert.Equal(At(4) / 4, At(8), 1e-3 * At(8));
    }

    [Fact]
    public void An_even_spread_gives_a_map_that_is_its_own_mirror() =>
        Gen.Select(Beds, Gen.Int[1, 30], Gen.Double[0.1, 1], Emitters, MaybeCurtains).Sample((bed, count, height, emitter, curtains) =>
        {
            var map = LightMap.Of(new(bed, LampPlacement.Even(bed, count), height, emitter, 10, curtains), 9, 8);
            for (var x = 0; x < 9; x++)
            {
                for (var y = 0; y < 8; y++)
                {
                    Assert.Equal(map[x, y], map[8 - x, y], 1e-9 * map.Greatest);
                    Assert.Equal(map[x, y], map[x, 7 - y], 1e-9 * map.Greatest);
                }
            }
        }, iter: 200);

    [Fact]
    public void A_measured_matt_lamp_is_a_matt_lamp()
    {
        // Derived: the table of the tiny file, 100 cd straight down; 1 m below 100 lx, 1 m aside 25 lx.
        var bed = new BedOutline(0.05, 0.05);
        double At(double x) => LightMap.Of(new(bed, [new(0.025 - x, 0.025)], 1, new TableEmitter(Matt), Matt.InterpolatedFlux), 1, 1).Mean;
        Assert.Equal(100, At(0), 0.2);
        Assert.Equal(25, At(1), 0.05);
    }

    [Fact]
    public void Turning_a_strip_turns_its_light()
    {
        var bed = new BedOutline(1, 1);
        var along = LightMap.Of(new(bed, [new(0.5, 0.5)], 0.2, new StripEmitter(1), 10), 10, 10);
        var across = LightMap.Of(new(bed, [new(0.5, 0.5, Turned: true)], 0.2, new StripEmitter(1), 10), 10, 10);
        Assert.Equal(along[0, 5], across[5, 0], 1e-9);
        Assert.True(along[0, 5] > 2 * along[5, 0]);
    }

    [Fact]
    public void The_lumen_method_agrees_within_its_own_crudeness()
    {
        // Handbook table: a matt trough, room cavity ratio 1 to 3, has a coefficient of 0.71 to 0.55 at reflectances 70/50/20. Ours has
        // no ceiling and a dark floor; walls of 50 %: the direct share plus what walls throw must fall near the same numbers.
        foreach (var (ratio, printed) in new[] { (1.0, 0.71), (2.0, 0.62), (3.0, 0.55) })
        {
            var height = ratio * 3 * 3 / (5.0 * (3 + 3));
            var bed = new BedOutline(3, 3);
            var map = LightMap.Of(new(bed, LampPlacement.Even(bed, 9), height, new SpotEmitter(), 1, new Curtains(50)), 15, 15);
            // Their trough lets out about 85 % of its lamps' light (from memory), and floor and ceiling give some back.
            Assert.InRange(0.85 * map.Share, 0.8 * printed, 1.2 * printed);
        }
    }

    [Fact]
    [Proof("photon-flux-on-bed", Evidence.Derived, "the map's share put into the mean rule gives the map's mean")]
    public void The_share_of_a_map_replaces_the_guess() =>
        Gen.Select(Beds, Gen.Int[1, 12], Gen.Double[0.1, 1], MaybeCurtains).Sample((bed, count, height, curtains) =>
        {
            var map = LightMap.Of(new(bed, LampPlacement.Even(bed, count), height, new SpotEmitter(), 30, curtains), 24, 24);
            var share = Reaching.Of(bed, count, height, new SpotEmitter(), curtains);
            Assert.Equal(map.Mean, DailyLight.MeanOnBed(30 * count, share, bed.Area), 1e-6 * map.Mean);
        }, iter: 50);

    [Theory]
    [InlineData(LampKind.WhiteLed)]
    [InlineData(LampKind.FluorescentTube)]
    [InlineData(LampKind.CompactFluorescent)]
    public void Shares_of_a_kind_are_a_range_and_curtains_and_lower_lamps_raise_it(LampKind kind)
    {
        var bed = new BedOutline(1.2, 0.6);
        var share = Reaching.For(bed, 4, 0.4, kind);
        Assert.True(share.Low < share.Likely && share.Likely <= share.High);
        Assert.InRange(share.Unit.FromSi(share.Low), 5, 95);
        Assert.True(Reaching.For(bed, 4, 0.4, kind, curtains: new Curtains(85)).Likely > share.Likely);
        Assert.True(Reaching.For(bed, 4, 0.2, kind).Likely > share.Likely);
        Assert.Same(Units.Percent, share.Unit);
        Assert.True(kind == LampKind.WhiteLed
            ? Reaching.For(bed, 4, 0.4, kind, bareLamp: true).Likely == share.Likely
            : Reaching.For(bed, 4, 0.4, kind, bareLamp: true).Likely < 0.9 * share.Likely);
    }

    [Fact]
    public void Common_practice_is_not_far_off()
    {
        // Common practice, from memory: bare lamp over a small bench 30 to 50 %, with reflector 60 to 75 %, white side curtains 80 to 90 %.
        var bed = new BedOutline(1.2, 0.6);
        Assert.InRange(Reaching.Of(bed, 4, 0.15, new BulbEmitter()), 25, 50);
        Assert.InRange(Reaching.Of(bed, 4, 0.25, new SpotEmitter()), 55, 75);
        Assert.InRange(Reaching.Of(bed, 4, 0.25, new SpotEmitter(), new Curtains(90)), 75, 92);
    }

    [Fact]
    public void A_scene_that_is_none_is_refused()
    {
        var bed = new BedOutline(2, 1);
        var scene = new LightScene(bed, LampPlacement.Even(bed, 2), 0.5, new SpotEmitter(), 10);
        Assert.Throws<ArgumentException>(() => LightMap.Of(scene with { Lamps = [] }));
        Assert.Throws<ArgumentException>(() => LightMap.Of(scene with { Height = 0.015 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightMap.Of(scene with { Photons = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightMap.Of(scene with { Lamps = [new(double.NaN, 0)] }));
        Assert.Throws<ArgumentException>(() => LightMap.Of(scene with { Lamps = [new(-1, 0)], Curtains = new(80) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightMap.Of(scene, 0));
        Assert.Throws<ArgumentException>(() => new TableEmitter(new([0, 90], [0], [0, 0])));
        Assert.False(LightMap.CanMap(bed, 0.015));
        Assert.Equal(0, LightMap.Of(scene with { Photons = 0 }).Share);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(4, 1)]
    [InlineData(8, 2)]
    [InlineData(18, 3)]
    public void Lamps_spread_in_even_rows(int count, int rows)
    {
        var bed = new BedOutline(4, 1.5);
        var spots = LampPlacement.Even(bed, count);
        Assert.Equal(count, spots.Count);
        Assert.Equal(rows, spots.Select(s => s.Y).Distinct().Count());
        Assert.Equal(bed.Length / 2, spots.Average(s => s.X), 9);
        Assert.Equal(bed.Width / 2, spots.Average(s => s.Y), 9);
    }

    [Fact]
    public void Five_lamps_over_a_square_lie_as_on_a_die() =>
        Assert.Equal([2, 1, 2], LampPlacement.Even(new(1, 1), 5).GroupBy(s => s.Y).OrderBy(g => g.Key).Select(g => g.Count()));

    [Fact]
    public void Any_count_over_any_bed_gives_that_many_over_it() =>
        Gen.Select(Beds, Gen.Int[1, 200]).Sample((bed, count) =>
        {
            var spots = LampPlacement.Even(bed, count);
            Assert.Equal(count, spots.Distinct().Count());
            Assert.All(spots, s => Assert.True(s.X > 0 && s.X < bed.Length && s.Y > 0 && s.Y < bed.Width));
        }, iter: 200);
}
