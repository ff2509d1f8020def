using CsCheck;
using MathNet.Numerics.Integration;
using Runnel.Engine.Light;

namespace Runnel.Engine.Tests.Light;

/// <summary>Light below one lamp, against worked examples and against sums over its surface.</summary>
public class SourceTests
{
    [Theory]
    [InlineData(0, 250)]
    [InlineData(1.5, 128)]
    [InlineData(2, 88.388)]
    [Proof("point-illuminance", Evidence.Derived, "by hand: 1000 cd at 2 m, 1000 x 2 / d³ with d = 2, 2.5 and √8 m")]
    public void A_small_lamp_of_a_thousand_candelas_at_two_metres(double aside, double lux) =>
        Assert.Equal(lux, PointSource.Illuminance(1000, 2, aside), 5e-4);

    [Fact]
    [Proof("point-illuminance", Evidence.Derived, "inverse square: twice the distance on the same line gives a quarter")]
    public void Twice_the_distance_gives_a_quarter() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0, 10]).Sample((height, aside) =>
        {
            Assert.Equal(PointSource.Illuminance(500, height, aside) / 4, PointSource.Illuminance(500, 2 * height, 2 * aside), 1e-9 * 500 / (height * height));
            Assert.Equal(PointSource.CosineLamp(500, height, aside) / 4, PointSource.CosineLamp(500, 2 * height, 2 * aside), 1e-9 * 500 / (height * height));
        });

    [Fact]
    [Proof("cosine-illuminance", Evidence.Derived, "problem in H. C. Verma, Concepts of Physics, ch. 22: 25 lx below a matt lamp at 2.4 m, asked 1.8 m aside; answer by hand 25 x 0.8⁴ = 10.24 lx")]
    public void A_matt_lamp_over_a_table() =>
        Assert.Equal(10.24, PointSource.CosineLamp(25 * 2.4 * 2.4, 2.4, 1.8), 9);

    [Theory]
    [InlineData(0.1, 1570.80)]
    [InlineData(0.2, 628.32)]
    [InlineData(0.5, 120.83)]
    [InlineData(1, 31.105)]
    [InlineData(2, 7.834)]
    [Proof("disc-illuminance", Evidence.Derived, "by hand: π L r²/(r² + h²) for 1000 cd/m² and r = 0.1 m")]
    public void A_disc_seen_from_below_its_middle(double height, double lux) =>
        Assert.Equal(lux, DiffuseDisc.Illuminance(Math.PI * 1000, 0.1, height), 6e-6 * lux + 5e-4);

    [Fact]
    [Proof("disc-illuminance", Evidence.Derived, "sum over the disc of Lambert's law, by the general-purpose library MathNet, at places aside")]
    public void A_disc_is_the_sum_of_its_parts()
    {
        foreach (var (radius, height, aside) in new[] { (0.1, 0.3, 0.0), (0.3, 0.1, 0.25), (0.3, 0.1, 0.5), (0.5, 1.0, 3.0), (1.0, 0.2, 1.0) })
        {
            var sum = DoubleExponentialTransformation.Integrate(r => DoubleExponentialTransformation.Integrate(
                turn => r * Element(height, aside - r * Math.Cos(turn), r * Math.Sin(turn)), 0, 2 * Math.PI, 1e-10), 0, radius, 1e-9);
            Assert.Equal(sum, DiffuseDisc.Illuminance(1, radius, height, aside), 1e-7);
        }
    }

    [Fact]
    public void A_point_is_within_a_hundredth_from_five_times_the_size_on()
    {
        Gen.Double[0.01, 1].Sample(radius =>
        {
            var size = 2 * radius;
            var far = PointSource.FiveTimes * size;
            Assert.True(PointSource.IsFar(far, size));
            Assert.False(PointSource.IsFar(0.99 * far, size));
            var disc = DiffuseDisc.Illuminance(1000, radius, far);
            var point = PointSource.CosineLamp(1000 * radius * radius, far, 0);
            Assert.InRange(point / disc, 1, 1.01 + 1e-9);
        });
    }

    [Theory]
    [InlineData(1, 1, 1, 0.13853, 0.23946)]
    [InlineData(0.6, 0.3, 0.3, 0.16738, 0.36074)]
    [InlineData(0.6, 0.6, 0.5, 0.16018, 0.31128)]
    [InlineData(1.2, 0.3, 0.5, 0.12491, 0.24917)]
    [Proof("panel-illuminance", Evidence.Published, "from memory: Howell's catalogue, configuration factor B-4, evaluated by another program")]
    public void A_panel_seen_from_below_its_corner_and_its_middle(double length, double width, double height, double corner, double middle)
    {
        Assert.Equal(corner, DiffuseRectangle.CornerFactor(length, width, height), 5e-6);
        Assert.Equal(corner, DiffuseRectangle.Illuminance(1, length, width, height, length / 2, width / 2), 5e-6);
        Assert.Equal(1000 * middle, DiffuseRectangle.Illuminance(1000, length, width, height), 5e-3);
    }

    [Fact]
    public void A_panel_seen_from_below_the_middle_of_an_edge() =>
        Assert.Equal(0.22064, DiffuseRectangle.Illuminance(1, 0.6, 0.6, 0.5, 0.3), 5e-6);

    [Fact]
    [Proof("panel-illuminance", Evidence.Derived, "sum over the panel of Lambert's law, by the general-purpose library MathNet, below it and beside it")]
    public void A_panel_is_the_sum_of_its_parts()
    {
        foreach (var (length, width, height, along, across) in new[] { (0.6, 0.6, 0.5, 0.0, 0.0), (1.2, 0.3, 0.2, 0.5, 0.1), (0.5, 0.5, 0.3, 1.0, 0.7), (0.2, 1.0, 0.1, 0.0, 2.0) })
        {
            var sum = GaussLegendreRule.Integrate((x, y) => Element(height, along - x, across - y), -length / 2, length / 2, -width / 2, width / 2, 64);
            Assert.Equal(sum, DiffuseRectangle.Illuminance(1, length, width, height, along, across), 1e-9);
        }
    }

    [Fact]
    [Proof("strip-illuminance", Evidence.Derived, "by hand: (i₀/h)(t/2 + sin 2t / 4), 100 cd/m, 1.2 m, 0.5 m up: below one end, the middle; endless π i₀/2h")]
    public void A_strip_seen_from_below()
    {
        Assert.Equal(153.103, DiffuseLine.Strip(100, 1.2, 0.5, 0.6), 1e-3);
        Assert.Equal(273.572, DiffuseLine.Strip(100, 1.2, 0.5), 1e-3);
        Assert.Equal(314.159, DiffuseLine.Strip(100, 100, 0.5), 1e-3);
    }

    [Fact]
    [Proof("strip-illuminance", Evidence.Derived, "a narrow panel of the same light, and the sum of a tube's parts by the general-purpose library MathNet")]
    public void A_strip_is_a_narrow_panel_and_a_tube_the_sum_of_its_parts() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.2, 1], Gen.Double[0, 2], Gen.Double[0, 2]).Sample((length, height, along, aside) =>
        {
            var panel = DiffuseRectangle.Illuminance(Math.PI / 0.001, length, 0.001, height, along, aside);
            Assert.Equal(panel, DiffuseLine.Strip(1, length, height, along, aside), 1e-5 * panel + 1e-9);
            var tube = GaussLegendreRule.Integrate(x =>
            {
                var d2 = (along - x) * (along - x) + aside * aside + height * height;
                return Math.Sqrt((aside * aside + height * height) / d2) * height / (d2 * Math.Sqrt(d2));
            }, -length / 2, length / 2, 64);
            Assert.Equal(tube, DiffuseLine.Tube(1, length, height, along, aside), 1e-7 * tube + 1e-9);
        }, iter: 50);

    [Theory]
    [InlineData(120, 1)]
    [InlineData(90, 2)]
    public void A_beam_is_a_power_of_the_cosine(double beam, double exponent) =>
        Assert.Equal(exponent, PointSource.BeamExponent(beam), 9);

    [Fact]
    public void A_cube_faces_itself_as_texts_print() =>
        // Published: the view factor between opposite sides of a cube, 0.1998, in texts on heat transfer (from memory).
        Assert.Equal(0.1998, DiffuseRectangle.Facing(1, 1, 1), 5e-5);

    // A matt element of unit exitance that faces down: cos² / (π d²).
    private static double Element(double height, double x, double y)
    {
        var d2 = x * x + y * y + height * height;
        return height * height / (Math.PI * d2 * d2);
    }
}
