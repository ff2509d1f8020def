using CsCheck;
using Runnel.Engine.Light;

namespace Runnel.Engine.Tests.Light;

/// <summary>Measured intensities: their light, what stands between their angles, their symmetries.</summary>
public class IntensityTableTests
{
    private static readonly double[] Down = [0, 15, 30, 45, 60, 75, 90];

    private static IntensityTable Cosine(IReadOnlyList<double> down) => new(down, [0], [.. down.Select(a => 100 * Math.Max(0, Math.Cos(a * Math.PI / 180)))]);

    [Fact]
    public void A_matt_lamp_of_a_hundred_candelas_gives_pi_times_as_many_lumens()
    {
        // Derived: the zonal sum of a cosine lamp is exact for any angles.
        Assert.Equal(314.159, Cosine(Down).Flux, 5e-4);
        Gen.Double[1, 89].Array[0, 12].Sample(angles =>
            Assert.Equal(100 * Math.PI, Cosine([0, .. angles.Distinct().Order(), 90]).Flux, 1e-9));
    }

    [Fact]
    public void Between_the_angles_it_goes_straight() =>
        // Derived: (96.593 + 86.603) / 2.
        Assert.Equal(91.598, new IntensityTable(Down, [0], [100, 96.593, 86.603, 70.711, 50, 25.882, 0]).At(22.5), 5e-4);

    [Fact]
    public void What_is_read_between_the_angles_adds_up_to_its_own_light()
    {
        var table = new IntensityTable([0, 20, 50, 90, 140], [0, 120, 360], [10, 9, 8, 2, 0, 10, 12, 20, 3, 1, 10, 9, 8, 2, 0]);
        var (sum, below) = (0.0, 0.0);
        const int Steps = 700;
        for (var v = 0; v < Steps; v++)
        {
            var down = (v + 0.5) * 140 / Steps;
            for (var h = 0; h < 360; h++)
            {
                var part = table.At(down, h + 0.5) * Math.Sin(down * Math.PI / 180) * (140.0 / Steps) * (Math.PI / 180) * (Math.PI / 180);
                sum += part;
                below += down < 90 ? part : 0;
            }
        }
        Assert.Equal(sum, table.InterpolatedFlux, 1e-4 * sum);
        Assert.Equal(below / sum, table.Downward, 1e-4);
        Assert.Equal(sum, table.Flux, 0.05 * sum);
    }

    [Fact]
    public void Quadrants_halves_and_whole_circles_are_one_lamp()
    {
        static double Of(double down, double around) => 50 + 10 * Math.Cos(2 * around * Math.PI / 180) - down / 3;
        static IntensityTable Read(double[] around)
        {
            double[] down = [0, 30, 60, 90];
            return IntensityTable.Expand(down, around, [.. around.SelectMany(a => down.Select(d => Of(d, a)))]);
        }
        double[] every = [.. Enumerable.Range(0, 13).Select(i => 30.0 * i)];
        var whole = Read(every);
        var others = new[] { Read(every[..4]), Read(every[..7]), Read(every[3..10]), Read(every[..12]) };
        foreach (var other in others)
        {
            Assert.Equal(every, other.Horizontal);
            Assert.Equal(whole.Flux, other.Flux, 1e-9);
            Gen.Select(Gen.Double[0, 90], Gen.Double[0, 360]).Sample((down, around) => Assert.Equal(whole.At(down, around), other.At(down, around), 1e-9), iter: 100);
        }
    }

    [Fact]
    public void A_lamp_brighter_to_one_side_keeps_its_side()
    {
        var table = IntensityTable.Expand([0, 90], [0, 90, 180], [10, 10, 10, 5, 10, 0]);
        Assert.Equal(10, table.At(90, 0), 9);
        Assert.Equal(5, table.At(90, 270), 9);
        Assert.Equal(0, table.At(90, 180), 9);
        var turned = IntensityTable.Expand([0, 90], [90, 180, 270], [10, 10, 10, 5, 10, 0]);
        Assert.Equal(10, turned.At(90, 90), 9);
        Assert.Equal(5, turned.At(90, 0), 9);
        Assert.Equal(0, turned.At(90, 270), 9);
    }

    [Fact]
    public void A_table_that_is_none_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new IntensityTable([0], [0], [1]));
        Assert.Throws<ArgumentException>(() => new IntensityTable([0, 0], [0], [1, 1]));
        Assert.Throws<ArgumentException>(() => new IntensityTable([0, 90], [0, 90], [1, 1, 1, 1]));
        Assert.Throws<ArgumentException>(() => new IntensityTable([0, 90], [0], [1, -1]));
        Assert.Throws<ArgumentException>(() => new IntensityTable([0, 90], [0], [1, double.NaN]));
        Assert.Throws<ArgumentException>(() => new IntensityTable([0, 200], [0], [1, 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cosine(Down).At(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cosine(Down).At(double.NaN));
    }
}
