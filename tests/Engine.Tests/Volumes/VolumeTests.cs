using CsCheck;
using MathNet.Numerics.Integration;
using Runnel.Engine.Volumes;

namespace Runnel.Engine.Tests.Volumes;

public class VolumeTests
{
    private const double LitresPerUsGallon = 3.785411784;
    private const double Inch = 0.0254;

    [Fact]
    [Proof("box-volume", Evidence.Derived, "a cube of one metre holds a thousand litres; twelve inches cubed are 7.480519 US gal (NIST SP 811)")]
    public void A_box_holds_length_times_width_times_depth()
    {
        Assert.Equal(1000, Volume.Box(1, 1, 1), 9);
        Assert.Equal(7.480519, Volume.Box(12 * Inch, 12 * Inch, 12 * Inch) / LitresPerUsGallon, 6);
        Assert.Equal(0, Volume.Box(1.1, 0.7, 0));
    }

    [Theory]
    [InlineData(4, 4.523893)]
    [InlineData(0.5, 0.565487)]
    [InlineData(0.442097, 0.5)]
    [Proof("cylinder-volume", Evidence.Published, "C. Bell, fluids, upright tank of 1.2 m x 4 m: printed to six decimals")]
    public void An_upright_tank_holds_what_a_tank_library_prints(double depth, double cubicMetres) =>
        Assert.Equal(cubicMetres, Volume.Cylinder(1.2, depth) / 1000, 1e-6);

    [Theory]
    [InlineData(96, 22, 1251.2018147)]
    [InlineData(72, 24, 1188.0298991)]
    [Proof("segment-area", Evidence.Published, "C. Bell, fluids, printed area of a partly filled circle; lengths scaled by ten")]
    public void A_partly_filled_circle_has_the_printed_area(double diameter, double depth, double area) =>
        Assert.Equal(area, CircularSegment.Area(diameter / 10, depth / 10) * 100, 1e-7 * area);

    [Fact]
    [Proof("segment-area", Evidence.Derived, "empty, half full and full circle")]
    public void A_circle_empty_half_full_and_full()
    {
        var whole = Math.PI * 0.6 * 0.6 / 4;
        Assert.Equal(0, CircularSegment.Area(0.6, 0));
        Assert.Equal(whole / 2, CircularSegment.Area(0.6, 0.3), 12);
        Assert.Equal(whole, CircularSegment.Area(0.6, 0.6), 12);
        Assert.Equal(0, CircularSegment.Area(0, 0));
    }

    [Fact]
    [Proof("segment-area", Evidence.Derived, "width of the water surface integrated over the depth by Gauss-Legendre quadrature (MathNet.Numerics)")]
    [Proof("lying-cylinder-volume", Evidence.Derived, "width of the water surface integrated over the depth by Gauss-Legendre quadrature (MathNet.Numerics)")]
    public void Adding_up_the_widths_gives_the_same_area() =>
        Gen.Double[0.05, 5].SelectMany(d => Gen.Double[0.02, 0.98].Select(share => (D: d, H: share * d))).Sample(x =>
        {
            var r = x.D / 2;
            // h = r (1 − cos a): the root of the width at the bottom is gone.
            var sum = GaussLegendreRule.Integrate(a => 2 * r * r * Math.Sin(a) * Math.Sin(a), 0, Math.Acos((r - x.H) / r), 32);
            Assert.Equal(sum, CircularSegment.Area(x.D, x.H), 1e-9 * sum);
            Assert.Equal(sum * 2 * 1000, CircularSegment.Volume(x.D, 2, x.H), 1e-6 * sum);
        });

    [Fact]
    [Proof("lying-cylinder-volume", Evidence.Published, "a public text prints 57.8 US gal for a drum of 22.5 in x 33.5 in; rounding 0.3 %")]
    [Proof("cylinder-volume", Evidence.Published, "a public text prints 57.8 US gal for a drum of 22.5 in x 33.5 in; rounding 0.3 %")]
    public void A_whole_drum_holds_the_same_standing_and_lying()
    {
        var lying = CircularSegment.Volume(22.5 * Inch, 33.5 * Inch, 22.5 * Inch);
        Assert.Equal(lying, Volume.Cylinder(22.5 * Inch, 33.5 * Inch), 9);
        Assert.Equal(57.8, lying / LitresPerUsGallon, 0.003 * 57.8);
    }

    [Fact]
    [Proof("lying-cylinder-volume", Evidence.Derived, "monotone in the depth; what is missing above is what lies below, upside down")]
    public void Deeper_is_never_less_and_top_and_bottom_mirror_each_other() =>
        Gen.Double[0.1, 2].SelectMany(d => Gen.Double[0, d].SelectMany(a => Gen.Double[0, d].Select(b => (D: d, A: a, B: b)))).Sample(x =>
        {
            var (low, high) = (Math.Min(x.A, x.B), Math.Max(x.A, x.B));
            Assert.True(CircularSegment.Volume(x.D, 1, low) <= CircularSegment.Volume(x.D, 1, high) + 1e-9);
            var whole = CircularSegment.Volume(x.D, 1, x.D);
            Assert.Equal(whole - CircularSegment.Volume(x.D, 1, low), CircularSegment.Volume(x.D, 1, x.D - low), 1e-6);
        });

    [Fact]
    [Proof("lying-cylinder-volume", Evidence.Derived, "no more goes into a full vessel")]
    public void A_level_above_the_crown_is_a_full_vessel() =>
        Assert.Equal(CircularSegment.Volume(0.5, 1, 0.5), CircularSegment.Volume(0.5, 1, 0.6));

    [Fact]
    [Proof("drum-diameter", Evidence.Published, "the drum of 22.5 in x 33.5 in for which a public text prints 57.8 US gal; 0.2 %")]
    [Proof("drum-length", Evidence.Published, "the drum of 22.5 in x 33.5 in for which a public text prints 57.8 US gal; 0.2 %")]
    public void The_common_drum_comes_out_with_its_own_size()
    {
        Assert.Equal(22.5 * Inch, Drum.Diameter(57.8 * LitresPerUsGallon), 0.002 * 22.5 * Inch);
        Assert.Equal(33.5 * Inch, Drum.Length(57.8 * LitresPerUsGallon), 0.002 * 33.5 * Inch);
    }

    [Fact]
    [Proof("drum-diameter", Evidence.Derived, "a cylinder of the size found holds the volume given")]
    [Proof("drum-length", Evidence.Derived, "a cylinder of the size found holds the volume given")]
    public void A_drum_holds_what_it_was_said_to_hold() =>
        Gen.Double[10, 1000].Sample(v => Assert.Equal(v, Volume.Cylinder(Drum.Diameter(v), Drum.Length(v)), 1e-9 * v));

    [Fact]
    [Proof("tote-height", Evidence.Derived, "a box on the pallet of that height holds the volume given")]
    public void A_tote_holds_what_it_was_said_to_hold() =>
        Gen.Double[300, 1500].Sample(v => Assert.Equal(v, Volume.Box(Tote.Length, Tote.Width, Tote.HeightOnPallet(v)), 1e-9 * v));

    [Theory]
    [InlineData(40, 120)]
    [InlineData(42, 126)]
    [InlineData(45, 135)]
    [Proof("media-volume", Evidence.Derived, "arithmetic by hand: 1.2 m x 1.0 m x 0.25 m")]
    [Proof("water-in-media", Evidence.Derived, "arithmetic by hand: 300 L at that share of voids")]
    public void A_bed_of_media_holds_its_share_of_water(double voids, double litres) =>
        Assert.Equal(litres, Media.WaterVolume(Media.BulkVolume(1.2, 0.25), voids), 9);

    [Fact]
    [Proof("media-volume", Evidence.Derived, "27 cubic feet are a cubic yard, 0.764555 m³ (NIST SP 811): 4 ft x 8 ft x 1 ft are 1.185 yd³")]
    public void A_bed_of_four_by_eight_feet_takes_1185_thousandths_of_a_cubic_yard() =>
        Assert.Equal(1.185, Media.BulkVolume(4 * 8 * 0.3048 * 0.3048, 0.3048) / 764.554857984, 0.0005);
}
