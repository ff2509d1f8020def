using CsCheck;
using Runnel.Engine.Frame;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Tests.Frame;

public class BeamTests
{
    private const double Psi = 0.006894757293168;
    private const double PoundPerInch = 4.4482216152605 / 0.0254;
    private const double Inch = 0.0254;
    private const string Table = "International Residential Code 2018, table R802.5.1(2), No. 2 at 24 in, 20 + 10 psf, span/240: printed to the inch";

    [Fact]
    [Proof("line-load", Evidence.Published, "Gere, problem 5.6-7: 120 psf on planks 16 in apart are 13.333 lb/in")]
    [Proof("bending-stress", Evidence.Published, "Gere, problem 5.6-7: 10.5 ft, 13.333 lb/in, 1350 psi: moment 26 460 lb-in, section modulus 19.6 in³; 0.1 %")]
    public void The_planks_of_Gere()
    {
        var length = 10.5 * 12 * Inch;
        var pounds = 120.0 * (16.0 / 12) * 10.5;
        var load = Weight.LineLoad(pounds * 0.45359237, 1, length);
        Assert.Equal(13.333, load / PoundPerInch, 0.001);
        Assert.Equal(1350, Beam.BendingStress(load, length, 19.6 * Math.Pow(2.54, 3)) / Psi, 1.35);
        // His moment, from a section modulus of one cubic inch.
        Assert.Equal(26460, Beam.BendingStress(load, length, Math.Pow(2.54, 3)) / Psi, 26.0);
    }

    [Theory]
    [InlineData(Wood.DouglasFirLarch, "2x4", 7, 3)]
    [InlineData(Wood.DouglasFirLarch, "2x6", 10, 8)]
    [InlineData(Wood.DouglasFirLarch, "2x8", 13, 6)]
    [InlineData(Wood.DouglasFirLarch, "2x10", 16, 5)]
    [InlineData(Wood.HemFir, "2x4", 7, 1)]
    [InlineData(Wood.HemFir, "2x6", 10, 4)]
    [InlineData(Wood.HemFir, "2x8", 13, 1)]
    [InlineData(Wood.HemFir, "2x10", 16, 0)]
    [InlineData(Wood.SouthernPine, "2x4", 6, 7)]
    [InlineData(Wood.SouthernPine, "2x6", 9, 10)]
    [InlineData(Wood.SouthernPine, "2x8", 12, 6)]
    [InlineData(Wood.SouthernPine, "2x10", 14, 9)]
    [InlineData(Wood.SprucePineFir, "2x4", 7, 2)]
    [InlineData(Wood.SprucePineFir, "2x6", 10, 6)]
    [InlineData(Wood.SprucePineFir, "2x8", 13, 3)]
    [InlineData(Wood.SprucePineFir, "2x10", 16, 3)]
    [Proof("span-by-bending", Evidence.Published, Table)]
    [Proof("bending-stress", Evidence.Published, Table)]
    [Proof("allowable-bending", Evidence.Published, Table)]
    public void Spans_of_the_code_come_out_to_the_inch(Wood wood, string sold, int feet, int inches)
    {
        var (size, values, allowable) = Joist(wood, sold, 1);
        var load = 30.0 * 24 / 12 / 12 * PoundPerInch;
        var byStrength = Beam.SpanByBending(load, Section.Modulus(size.Thickness * 1000, size.Depth * 1000), allowable);
        var bySag = Beam.SpanByDeflection(load * 20 / 30, values.Elasticity, Section.Inertia(size.Thickness * 1000, size.Depth * 1000), 240);
        Assert.Equal(12 * feet + inches, Math.Min(byStrength, bySag) / Inch, 0.75);
        Assert.Equal(allowable, Beam.BendingStress(load, byStrength, Section.Modulus(size.Thickness * 1000, size.Depth * 1000)), 1e-9);
    }

    [Fact]
    [Proof("span-by-deflection", Evidence.Published, "International Residential Code 2003: spruce-pine-fir No. 2 2x8 at 16 in, 40 + 10 psf, span/360: 12 ft 3 in; sag governs, 147.4 in")]
    [Proof("beam-deflection", Evidence.Published, "International Residential Code 2003: spruce-pine-fir No. 2 2x8 at 16 in, 40 + 10 psf, span/360: 12 ft 3 in; sag governs, 147.4 in")]
    public void A_floor_joist_of_the_code_is_governed_by_sag()
    {
        var (size, values, allowable) = Joist(Wood.SprucePineFir, "2x8", 1);
        var live = 40.0 * 16 / 12 / 12 * PoundPerInch;
        var inertia = Section.Inertia(size.Thickness * 1000, size.Depth * 1000);
        var bySag = Beam.SpanByDeflection(live, values.Elasticity, inertia, 360);
        var byStrength = Beam.SpanByBending(live * 50 / 40, Section.Modulus(size.Thickness * 1000, size.Depth * 1000), allowable);
        Assert.True(bySag < byStrength);
        Assert.Equal(12 * 12 + 3, Math.Floor(bySag / Inch), 1e-9);
        Assert.Equal(bySag / 360, Beam.Deflection(live, bySag, values.Elasticity, inertia) / 1000, 1e-9);
    }

    [Theory]
    [InlineData(16, 16, 1)]
    [InlineData(12, 18, 0)]
    [Proof("span-by-bending", Evidence.Published, "a builder's chart of southern pine 2x10 joists before 2013 (F_b 1050 psi, E 1.6 million psi), 40 + 10 psf: 16-1 and 18-0")]
    [Proof("span-by-deflection", Evidence.Published, "a builder's chart of southern pine 2x10 joists before 2013 (F_b 1050 psi, E 1.6 million psi), 40 + 10 psf: 16-1 and 18-0")]
    public void A_builders_chart_from_before_2013(double spacing, int feet, int inches)
    {
        var load = 40 * spacing / 12 / 12 * PoundPerInch;
        var byStrength = Beam.SpanByBending(load * 1.25, Section.Modulus(1.5 * 25.4, 9.25 * 25.4), 1050 * 1.15 * Psi);
        var bySag = Beam.SpanByDeflection(load, 1.6e6 * Psi, Section.Inertia(1.5 * 25.4, 9.25 * 25.4), 360);
        Assert.Equal(12 * feet + inches, Math.Min(byStrength, bySag) / Inch, 0.75);
    }

    [Fact]
    [Proof("beam-deflection", Evidence.Derived, "summed up from the curvature M/(E I) in 4000 steps: 0.01 %")]
    [Proof("shear-deflection", Evidence.Derived, "summed up from the shear 6 V/(5 G A) in 4000 steps: 0.01 %")]
    public void Deflections_are_what_curvature_and_shear_add_up_to()
    {
        const double load = 1500;
        const double span = 1.8;
        const double elasticity = 9000e6;
        var (thickness, depth) = (0.045, 0.12);
        var (area, inertia) = (thickness * depth, thickness * Math.Pow(depth, 3) / 12);
        const int steps = 4000;
        var step = span / 2 / steps;
        double bending = 0;
        double shear = 0;
        for (var i = 0; i < steps; i++)
        {
            var x = (i + 0.5) * step;
            // Virtual work of a unit force at mid-span: half the beam, twice.
            bending += 2 * (load * x * (span - x) / 2) * (x / 2) / (elasticity * inertia) * step;
            shear += 2 * (load * (span / 2 - x)) * 0.5 * 1.2 / (elasticity / 16 * area) * step;
        }
        Assert.Equal(bending * 1000, Beam.Deflection(load, span, 9000, inertia * 1e8), 1e-4 * bending * 1000);
        Assert.Equal(shear * 1000, Beam.ShearDeflection(load, span, 9000, area * 1e4), 1e-4 * shear * 1000);
    }

    [Fact]
    [Proof("shear-stress", Evidence.Derived, "the parabola of shear over the depth holds the whole force, and its peak is one and a half times its mean")]
    public void Shear_over_the_depth_adds_up_to_the_force()
    {
        var (load, span, thickness, depth) = (2000.0, 1.5, 0.045, 0.15);
        var peak = Beam.ShearStress(load, span, thickness * depth * 1e4) * 1e6;
        double force = 0;
        const int layers = 10000;
        for (var i = 0; i < layers; i++)
        {
            var y = -depth / 2 + (i + 0.5) * depth / layers;
            force += peak * (1 - 4 * y * y / (depth * depth)) * thickness * depth / layers;
        }
        Assert.Equal(load * span / 2, force, 0.01);
    }

    [Fact]
    [Proof("beam-deflection", Evidence.Derived, "sag goes with the fourth power of the span, bending with the second, shear with the first")]
    public void Sag_goes_with_the_fourth_power_of_the_span() =>
        Gen.Select(Gen.Double[10, 5000], Gen.Double[0.3, 3], Gen.Double[1.1, 4]).Sample((load, span, times) =>
        {
            Assert.Equal(Math.Pow(times, 4), Beam.Deflection(load, span * times, 9000, 500) / Beam.Deflection(load, span, 9000, 500), 1e-6);
            Assert.Equal(times * times, Beam.BendingStress(load, span * times, 100) / Beam.BendingStress(load, span, 100), 1e-9);
            Assert.Equal(times, Beam.ShearStress(load, span * times, 50) / Beam.ShearStress(load, span, 50), 1e-9);
        });

    [Fact]
    [Proof("long-term-deflection", Evidence.Derived, "twice the lasting part when wet, one and a half times when dry, and the passing part as it is")]
    public void Creep_takes_the_lasting_part_only()
    {
        Assert.Equal(2 * 4 + 1, Beam.LongTermDeflection(4, 2, 1), 12);
        Assert.Equal(6, Beam.LongTermDeflection(4, 1.5, 0), 12);
        Assert.Equal(1, Beam.LongTermDeflection(0, 2, 1), 12);
    }

    [Fact]
    [Proof("beam-stability", Evidence.Published, "example 5.3 of a structural engineering reference manual as quoted in public: F_bE/F_b* of 2.83 gives C_L 0.974")]
    public void A_beam_that_may_topple_keeps_what_the_manual_says()
    {
        // Any numbers whose ratio is 2.83.
        const double slenderness = 10;
        const double bending = 8;
        Assert.Equal(0.974, Beam.StabilityFactor(slenderness, 2.83 * bending * slenderness * slenderness / 1.2, bending), 0.0005);
    }

    [Fact]
    [Proof("beam-slenderness", Evidence.Derived, "the two rules for the effective length meet where the length is seven depths, within 0.1 %")]
    public void Both_rules_for_the_effective_length_meet()
    {
        var below = Beam.Slenderness(6.9999 * 0.15, 45, 150);
        var above = Beam.Slenderness(7.0001 * 0.15, 45, 150);
        Assert.Equal(below, above, 0.001 * below);
        Assert.Equal(Math.Sqrt(2.06 * 600 * 150) / 45, Beam.Slenderness(0.6, 45, 150), 1e-9);
    }

    private static (LumberSize Size, TimberValues Values, double Allowable) Joist(Wood wood, string sold, double duration)
    {
        var size = LumberSize.Read(sold)!;
        var values = Timber.Of(wood, size);
        var allowable = Strength.Bending(values.Bending, duration, 1, 1, values.TakesSizeFactor ? SizeFactor.Bending(size) : 1, 1.15);
        return (size, values, allowable);
    }
}
