using CsCheck;
using Runnel.Engine.Frame;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Tests.Frame;

public class StrengthTests
{
    private const double Psi = 0.006894757293168;
    private const string Mst = "Missouri S&T course 5260, problem 4.30: hem-fir No. 2 2x10 at 16 in, dead load and snow, braced: 1237, 173, 405, 1495 psi, E 1.3 million; ±1 psi";

    [Fact]
    [Proof("allowable-bending", Evidence.Published, Mst)]
    [Proof("allowable-shear", Evidence.Published, Mst)]
    [Proof("allowable-bearing", Evidence.Published, Mst)]
    [Proof("allowable-compression", Evidence.Published, Mst)]
    [Proof("adjusted-elasticity", Evidence.Published, Mst)]
    public void The_roof_joist_of_a_course()
    {
        var size = LumberSize.Read("2x10")!;
        var values = Timber.Of(Wood.HemFir, size);
        Assert.Equal(1237, Strength.Bending(values.Bending, 1.15, 1, 1, SizeFactor.Bending(size), 1.15) / Psi, 1.0);
        Assert.Equal(173, Strength.Shear(values.Shear, 1.15, 1) / Psi, 1.0);
        Assert.Equal(405, Strength.Bearing(values.Bearing, 1) / Psi, 1e-6);
        Assert.Equal(1495, Strength.Compression(values.Compression, 1.15, 1, SizeFactor.Compression(size), 1) / Psi, 1.0);
        Assert.Equal(1.3e6, StrengthFormulas.AdjustedStiffness.Compute([values.Elasticity, 1]) / Psi, 1.0);
    }

    [Fact]
    [Proof("allowable-bending", Evidence.Published, "a town's permit sheet: F_b 850, C_D 1.15, C_F 1.2: 1173 psi")]
    [Proof("allowable-shear", Evidence.Published, "a town's permit sheet: F_v 180, C_D 1.15: 207 psi")]
    public void A_towns_permit_sheet()
    {
        Assert.Equal(1173, Strength.Bending(850 * Psi, 1.15, 1, 1, 1.2, 1) / Psi, 0.5);
        Assert.Equal(207, Strength.Shear(180 * Psi, 1.15, 1) / Psi, 0.5);
    }

    [Theory]
    [InlineData(6, 0.6621, 16.8)]
    [InlineData(8, 0.4464, 11.3)]
    [InlineData(10, 0.3050, 7.7)]
    [Proof("column-stability", Evidence.Published, "Gere, problem 11.9-31: column 3.5 x 7.25 in, F_c 1000 psi, E 1.3 million, K_cE 0.3, c 0.8: 16.8, 11.3 and 7.7 kip; 0.5 %")]
    [Proof("allowable-compression", Evidence.Published, "Gere, problem 11.9-31: column 3.5 x 7.25 in, F_c 1000 psi, E 1.3 million, K_cE 0.3, c 0.8: 16.8, 11.3 and 7.7 kip; 0.5 %")]
    public void The_column_of_Gere(double feet, double factor, double kip)
    {
        // His older form has K_cE E for 0.822 E_min'.
        var stability = Strength.ColumnStability(feet * 12 / 3.5, 0.3 * 1.3e6 * Psi / 0.822, 1000 * Psi);
        Assert.Equal(factor, stability, 0.0005);
        var force = Strength.Compression(1000 * Psi, 1, 1, 1, stability) / Psi * 3.5 * 7.25 / 1000;
        Assert.Equal(kip, force, 0.05);
    }

    [Theory]
    [InlineData(20, 0.497)]
    [InlineData(21.8, 0.434)]
    [Proof("column-stability", Evidence.Published, "a public engineering wiki: 2x6 Douglas fir-larch, construction grade, F_c* 1898 psi, F_cE 1130 and 950 psi: 0.497 and 0.434; 0.5 %")]
    public void The_stud_of_a_wiki(double slenderness, double factor) =>
        // It prints E_min 555 000 psi; its F_cE follow from 550 000, the value of that grade.
        Assert.Equal(factor, Strength.ColumnStability(slenderness, 550000 * Psi, 1897.5 * Psi), 0.0025);

    [Fact]
    [Proof("column-stability", Evidence.Derived, "a long column carries what Euler's formula gives with its safety: 0.822 E_min'/(l_e/d)²; a block carries all")]
    public void A_long_column_is_Eulers_and_a_block_is_not()
    {
        // With c = 1 the curve is the lesser of the two exactly.
        Assert.Equal(0.822 * 3000 / 2500 / 10, Strength.ColumnStability(50, 3000, 10, 1), 1e-9);
        Assert.Equal(1, Strength.ColumnStability(0.1, 3000, 10), 1e-4);
        // Euler over 1.66 with I = b d³/12 is where 0.822 comes from: π²/12.
        Assert.Equal(Math.PI * Math.PI / 12, 0.822, 0.001);
    }

    [Fact]
    [Proof("column-stability", Evidence.Derived, "longer never stronger, stiffer never weaker")]
    [Proof("beam-stability", Evidence.Derived, "longer never stronger, stiffer never weaker; between 0 and 1")]
    public void Longer_is_never_stronger() =>
        Gen.Select(Gen.Double[0.1, 49], Gen.Double[1, 1.02], Gen.Double[500, 19000], Gen.Double[0.5, 20]).Sample((slenderness, longer, elasticity, strength) =>
        {
            foreach (var factor in (Func<double, double, double>[])[(s, e) => Strength.ColumnStability(s, e, strength), (s, e) => Beam.StabilityFactor(s, e, strength)])
            {
                var here = factor(slenderness, elasticity);
                Assert.InRange(here, 0, 1);
                Assert.True(factor(slenderness * longer, elasticity) <= here + 1e-12);
                Assert.True(factor(slenderness, elasticity * 1.05) >= here - 1e-12);
            }
        });

    [Fact]
    [Proof("contact-stress", Evidence.Derived, "2231 lb on 1.5 in x 3.5 in are 425 psi")]
    public void A_leg_under_a_rail() =>
        Assert.Equal(425, Strength.Stress(2231.25 * 4.4482216152605, 1.5 * 3.5 * 2.54 * 2.54) / Psi, 0.01);

    [Theory]
    [InlineData("2x4", 1.5, 1.15)]
    [InlineData("2x6", 1.3, 1.1)]
    [InlineData("2x8", 1.2, 1.05)]
    [InlineData("2x10", 1.1, 1.0)]
    [InlineData("2x12", 1.0, 1.0)]
    [InlineData("2x14", 0.9, 0.9)]
    [InlineData("4x8", 1.3, 1.05)]
    [InlineData("45 x 90 mm", 1.5, 1.15)]
    [InlineData("45 x 95 mm", 1.4, 1.1)]
    public void Size_factors_are_as_printed(string sold, double bending, double compression)
    {
        // Published: NELMA grading rules, table A. A size between two of them counts as the wider; 90 mm counts as the 89 mm of a 2x4.
        var size = LumberSize.Read(sold)!;
        Assert.Equal(bending, SizeFactor.Bending(size), 12);
        Assert.Equal(compression, SizeFactor.Compression(size), 12);
    }

    [Theory]
    [InlineData("2x4")]
    [InlineData("45 x 90 mm")]
    [InlineData("2x10")]
    [InlineData("2x14")]
    [InlineData("6x6")]
    public void Unknown_wood_is_never_taken_for_stronger_than_any_that_is_known(string sold)
    {
        var size = LumberSize.Read(sold)!;
        var unknown = Timber.Of(Wood.Unknown, size);
        Assert.False(unknown.TakesSizeFactor);
        foreach (var known in Timber.Known.Select(w => Timber.Of(w, size)))
        {
            Assert.True(unknown.Bending <= known.Bending);
            Assert.True(unknown.Shear <= known.Shear);
            Assert.True(unknown.Bearing <= known.Bearing);
            Assert.True(unknown.Compression <= known.Compression);
            Assert.True(unknown.Elasticity <= known.Elasticity);
            Assert.True(unknown.Stability <= known.Stability);
            Assert.True(unknown.Wet.Bending <= known.Wet.Bending);
        }
    }

    [Fact]
    public void A_board_has_no_strength_to_read() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Timber.Of(Wood.SprucePineFir, LumberSize.Read("1x6")!));
}
