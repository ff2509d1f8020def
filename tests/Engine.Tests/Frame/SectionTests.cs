using Runnel.Engine.Frame;

namespace Runnel.Engine.Tests.Frame;

public class SectionTests
{
    private const double Inch = 25.4;

    [Theory]
    [InlineData("2x4", 1.5, 3.5)]
    [InlineData("2 x 6", 1.5, 5.5)]
    [InlineData("2×8", 1.5, 7.25)]
    [InlineData("2x10 in", 1.5, 9.25)]
    [InlineData("2X12", 1.5, 11.25)]
    [InlineData("4x4", 3.5, 3.5)]
    [InlineData("4x6", 3.5, 5.5)]
    [InlineData("6x6", 5.5, 5.5)]
    [InlineData("1x4", 0.75, 3.5)]
    [InlineData("1.5 x 3.5 in", 1.5, 3.5)]
    [InlineData("2\" x 4\"", 1.5, 3.5)]
    [InlineData("4x2", 1.5, 3.5)]
    public void Nominal_sizes_become_the_dressed_sizes_of_PS_20(string text, double thickness, double depth)
    {
        // Published: tables of PS 20 sizes.
        var size = LumberSize.Read(text);
        Assert.NotNull(size);
        Assert.Equal(thickness * 0.0254, size.Thickness, 1e-9);
        Assert.Equal(depth * 0.0254, size.Depth, 1e-9);
    }

    [Theory]
    [InlineData("45 x 90 mm", 45, 90)]
    [InlineData("45x90", 45, 90)]
    [InlineData("4.5 x 9 cm", 45, 90)]
    [InlineData("95 mm x 95 mm", 95, 95)]
    [InlineData("147 x 47 mm", 47, 147)]
    public void Metric_sizes_are_taken_as_written(string text, double thickness, double depth)
    {
        var size = LumberSize.Read(text);
        Assert.NotNull(size);
        Assert.False(size.Nominal);
        Assert.Equal(thickness / 1000, size.Thickness, 1e-9);
        Assert.Equal(depth / 1000, size.Depth, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a plank")]
    [InlineData("2x4x6")]
    [InlineData("0 x 90 mm")]
    [InlineData("2.2 x 4")]
    [InlineData("1 x 2 mm")]
    [InlineData("9000 x 9000 mm")]
    [InlineData("-2 x 4")]
    public void What_is_no_size_is_refused(string text) => Assert.Null(LumberSize.Read(text));

    [Theory]
    [InlineData(1.5, 3.5, 5.25, 3.063, 5.359)]
    [InlineData(1.5, 5.5, 8.25, 7.563, 20.80)]
    [InlineData(1.5, 7.25, 10.88, 13.14, 47.63)]
    [InlineData(1.5, 9.25, 13.88, 21.39, 98.93)]
    [InlineData(1.5, 11.25, 16.88, 31.64, 178.0)]
    [InlineData(3.5, 3.5, 12.25, 7.146, 12.51)]
    [InlineData(3.5, 1.5, 5.25, 1.313, 0.984)]
    [Proof("section-area", Evidence.Published, "from memory: NDS Supplement, table 1B, section properties of dressed lumber; 0.1 %")]
    [Proof("section-inertia", Evidence.Published, "from memory: NDS Supplement, table 1B, section properties of dressed lumber, the last row about the weak axis; 0.1 %")]
    public void Properties_of_dressed_lumber_are_as_tabulated(double thickness, double depth, double area, double modulus, double inertia)
    {
        Assert.Equal(area, Section.Area(thickness * Inch, depth * Inch) / (2.54 * 2.54), 0.001 * area);
        Assert.Equal(modulus, Section.Modulus(thickness * Inch, depth * Inch) / Math.Pow(2.54, 3), 0.001 * modulus);
        Assert.Equal(inertia, Section.Inertia(thickness * Inch, depth * Inch) / Math.Pow(2.54, 4), 0.001 * inertia);
    }

    [Fact]
    [Proof("section-inertia", Evidence.Derived, "modulus is inertia over half the depth; four quarters beside each other are the whole")]
    [Proof("section-area", Evidence.Derived, "four quarters beside each other are the whole")]
    public void Modulus_is_inertia_over_half_the_depth()
    {
        Assert.Equal(Section.Inertia(45, 95) / (9.5 / 2), Section.Modulus(45, 95), 1e-9);
        Assert.Equal(4 * Section.Area(20, 95), Section.Area(80, 95), 1e-9);
        Assert.Equal(4 * Section.Inertia(20, 95), Section.Inertia(80, 95), 1e-9);
    }

    [Fact]
    [Proof("section-modulus", Evidence.Published, "Gere, problem 5.6-7: of the planks, the 2x10 is the least whose section modulus is not under 19.6 in³")]
    public void The_plank_that_Gere_chooses_is_the_least_that_is_enough()
    {
        double Modulus(string size) => Section.Modulus(LumberSize.Read(size)!.Thickness * 1000, LumberSize.Read(size)!.Depth * 1000) / Math.Pow(2.54, 3);
        Assert.True(Modulus("2x8") < 19.6);
        Assert.True(Modulus("2x10") >= 19.6);
    }
}
