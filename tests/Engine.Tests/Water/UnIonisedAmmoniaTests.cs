using CsCheck;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Water;

public sealed class UnIonisedAmmoniaTests
{
    private const string Share = "un-ionised-ammonia-share";
    private const string Product = "un-ionised-ammonia";

    // The 32 °C column of that table is 2 to 4 % too high and its cell at pH 7.4, 20 °C a misprint: left out.
    [Theory]
    [InlineData(7.0, new[] { 6.0, 10, 14, 18, 20, 24, 26, 28, 30 }, new[] { .0013, .0018, .0025, .0034, .0039, .0052, .0060, .0069, .0080 })]
    [InlineData(7.4, new[] { 6.0, 10, 14, 18, 24, 26, 28, 30 }, new[] { .0034, .0046, .0063, .0085, .0131, .0150, .0173, .0198 })]
    [InlineData(8.0, new[] { 6.0, 10, 14, 18, 20, 24, 26, 28, 30 }, new[] { .0133, .0182, .0247, .0330, .0381, .0502, .0574, .0654, .0743 })]
    [Proof(Share, Evidence.Published, "University of Florida EDIS FA16, Ammonia in aquatic systems, table; tolerance its rounding, three cells of it cut and not rounded")]
    public void The_table_of_an_extension_service_agrees(double pH, double[] temperatures, double[] shares)
    {
        for (var i = 0; i < shares.Length; i++)
        {
            Assert.Equal(shares[i], UnIonisedAmmonia.Emerson(temperatures[i], pH) / 100, 0.00006);
        }
    }

    [Theory]
    [InlineData(7.0, .19, .27, .40, .55)]
    [InlineData(7.5, .59, .85, 1.24, 1.73)]
    [InlineData(8.0, 1.83, 2.65, 3.83, 5.28)]
    [InlineData(8.5, 5.55, 7.98, 11.18, 14.97)]
    [Proof(Share, Evidence.Published, "Trussell 1972, share in fresh water at 10, 15, 20, 25 °C: an independent table; 3 %")]
    public void An_independent_table_agrees(double pH, double at10, double at15, double at20, double at25)
    {
        foreach (var (t, percent) in new[] { (10.0, at10), (15.0, at15), (20.0, at20), (25.0, at25) })
        {
            Assert.Equal(percent, UnIonisedAmmonia.Emerson(t, pH), Math.Max(0.005, 0.03 * percent));
        }
    }

    [Theory]
    [InlineData(10, 1.83)]
    [InlineData(25, 5.39)]
    [Proof(Share, Evidence.Published, "Clegg and Whitfield 1995, pH 8, fresh water: an independent equation; 1 %")]
    public void A_newer_equation_agrees(double t, double percent) => Assert.Equal(percent, UnIonisedAmmonia.Emerson(t, 8), 0.01 * percent);

    [Fact]
    [Proof(Share, Evidence.Derived, "pKa of ammonium 9.25 at 25 °C (any chemistry handbook, from memory): half is un-ionised there")]
    public void Half_is_un_ionised_at_the_pKa() => Assert.Equal(50, UnIonisedAmmonia.Emerson(25, 9.25), 0.5);

    [Fact]
    public void The_misprinted_coefficient_is_not_ours() =>
        // A public page prints 2727.92: 5.445 % here. The right one gives 5.366 %.
        Assert.Equal(5.366, UnIonisedAmmonia.Emerson(25, 8), 0.002);

    [Theory]
    [InlineData(1.0, 8.0, 24, 0.0502, 0.0001)]
    [InlineData(0.8, 7.0, 18, 0.00272, 0.00004)]
    [InlineData(1.0, 8.5, 20, 0.1118, 0.001)]
    [Proof(Product, Evidence.Published, "worked examples: EDIS FA16 (0.0502); a fishkeeping note on the same table (0.00272); Trussell 1972 (0.1118, 1 %)")]
    public void Worked_examples_come_out(double total, double pH, double t, double expected, double tolerance) =>
        Assert.Equal(expected, UnIonisedAmmonia.FromTotal(total, t, pH), tolerance);

    [Fact]
    [Proof(Share, Evidence.Derived, "chemistry: more with warmth and with pH, never under 0 or over 100 %")]
    public void It_rises_with_warmth_and_pH() =>
        Gen.Select(Gen.Double[0, 49], Gen.Double[4, 10.9]).Sample((t, pH) =>
        {
            var here = UnIonisedAmmonia.Emerson(t, pH);
            return here > 0 && here < 100 && UnIonisedAmmonia.Emerson(t + 1, pH) > here && UnIonisedAmmonia.Emerson(t, pH + 0.1) > here;
        });

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        Assert.Equal(
            UnIonisedAmmonia.Emerson(20, 7.2), WaterFormulas.UnIonisedAmmoniaShare.Apply(Of(68, Units.Fahrenheit), Of(7.2, Units.One)).Value, 1e-9);
        Assert.Equal(
            UnIonisedAmmonia.FromTotal(2, 20, 7.2),
            WaterFormulas.UnIonisedAmmonia.Apply(Of(2, Units.MilligramNitrogenPerLitre), Of(68, Units.Fahrenheit), Of(7.2, Units.PH)).Value,
            1e-12);
    }

    [Fact]
    public void A_reading_that_is_not_counted_as_nitrogen_is_refused() =>
        Assert.Throws<UnitMismatchException>(() =>
            WaterFormulas.UnIonisedAmmonia.Apply(Of(2, Units.MilligramPerLitre), Of(20, Units.Celsius), Of(7.2, Units.PH)));
}
