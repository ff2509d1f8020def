using CsCheck;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Water;

public sealed class OxygenSaturationTests
{
    private const string Id = "oxygen-saturation";
    private const double Kilopascals = 101.325;
    private const double Torr = 760;

    /// <summary>°C, mg/L as printed, fall for each g/kg of salt.</summary>
    public static TheoryData<double, double, double> En25814() => new()
    {
        { 0, 14.6, 0.0875 }, { 1, 14.2, 0.0843 }, { 2, 13.8, 0.0818 }, { 3, 13.5, 0.0789 }, { 4, 13.1, 0.0760 }, { 5, 12.8, 0.0739 },
        { 6, 12.5, 0.0714 }, { 7, 12.2, 0.0693 }, { 8, 11.8, 0.0671 }, { 9, 11.6, 0.0650 }, { 10, 11.3, 0.0632 }, { 11, 11.0, 0.0614 },
        { 12, 10.8, 0.0593 }, { 13, 10.5, 0.0582 }, { 14, 10.3, 0.0561 }, { 15, 10.1, 0.0545 }, { 16, 9.87, 0.0532 }, { 17, 9.66, 0.0514 },
        { 18, 9.47, 0.0500 }, { 19, 9.28, 0.0489 }, { 20, 9.09, 0.0475 }, { 21, 8.91, 0.0464 }, { 22, 8.74, 0.0453 }, { 23, 8.58, 0.0443 },
        { 24, 8.42, 0.0432 }, { 25, 8.26, 0.0421 }, { 26, 8.11, 0.0407 }, { 27, 7.97, 0.0400 }, { 28, 7.83, 0.0389 }, { 29, 7.69, 0.0382 },
        { 30, 7.56, 0.0371 },
    };

    [Theory]
    [MemberData(nameof(En25814))]
    [Proof(Id, Evidence.Published, "EN 25814 (ISO 5814), table of oxygen saturation of fresh water, as printed; tolerance its rounding and the 0.1 % that Benson and Krause claim")]
    public void Fresh_water_at_one_atmosphere_is_the_table_of_EN_25814(double t, double printed, double fall)
    {
        Assert.True(fall > 0);
        Assert.Equal(printed, OxygenSaturation.BensonKrause(t), (t <= 15 ? 0.05 : 0.005) + 0.001 * printed);
    }

    [Theory]
    [MemberData(nameof(En25814))]
    [Proof(Id, Evidence.Published, "EN 25814 (ISO 5814), fall for each g/kg of salt: a straight line drawn through a curve, met at 40 g/kg; 2.5 %")]
    public void Salt_lowers_it_as_EN_25814_says(double t, double printed, double fall)
    {
        Assert.True(printed > 0);
        Assert.Equal(fall, (OxygenSaturation.BensonKrause(t) - OxygenSaturation.BensonKrause(t, Kilopascals, 40)) / 40, 0.025 * fall);
    }

    [Theory]
    [InlineData(0, 14.63)]
    [InlineData(5, 12.77)]
    [InlineData(10, 11.28)]
    [InlineData(12, 10.77)]
    [InlineData(15, 10.07)]
    [InlineData(20, 9.08)]
    [InlineData(22, 8.73)]
    [InlineData(25, 8.26)]
    [InlineData(26, 8.12)]
    [InlineData(28, 7.84)]
    [InlineData(30, 7.57)]
    [InlineData(35, 6.98)]
    [Proof(Id, Evidence.Measured, "Montgomery, Thom and Cockburn 1964, measured by titration, smoothed table (its 18 °C is a misprint, left out)")]
    public void Titrated_water_held_as_much(double t, double measured) =>
        Assert.Equal(measured, OxygenSaturation.BensonKrause(t), 0.005 * measured);

    [Theory]
    [InlineData(10, 700, 10.4)]
    [InlineData(10, 650, 9.7)]
    [InlineData(15, 700, 9.3)]
    [InlineData(15, 650, 8.7)]
    [InlineData(20, 700, 8.4)]
    [InlineData(20, 650, 7.8)]
    [Proof(Id, Evidence.Published, "handbook table by pressure, of an older solubility that is 0.1 mg/L high near 15 to 20 °C: tolerance that")]
    public void Thin_air_holds_less_as_an_older_table_says(double t, double torr, double printed) =>
        Assert.Equal(printed, OxygenSaturation.BensonKrause(t, torr / Torr * Kilopascals), 0.105);

    [Theory]
    [InlineData(10, 700)]
    [InlineData(20, 700)]
    [InlineData(20, 600)]
    [InlineData(30, 600)]
    [Proof(Id, Evidence.Derived, "the plain rule C P / 760 overstates, since water vapour keeps its share: by up to 1.2 % at 600 mmHg")]
    public void The_plain_rule_of_proportion_is_a_little_high(double t, double torr)
    {
        var full = OxygenSaturation.BensonKrause(t, torr / Torr * Kilopascals);
        var plain = OxygenSaturation.BensonKrause(t) * torr / Torr;
        Assert.InRange(plain / full, 1.0001, 1.012);
    }

    [Fact]
    [Proof(Id, Evidence.Derived,
        "the same pressure correction from another vapour pressure (Buck 1996, from memory) and the second printed form of θ, in kelvin: 0.02 %")]
    public void Pressure_corrects_it_alike_with_another_vapour_pressure()
    {
        for (var t = 0; t <= 40; t += 5)
        {
            for (var kPa = 55.0; kPa <= 110; kPa += 5)
            {
                var (p, kelvin) = (kPa / Kilopascals, t + 273.15);
                var w = 0.61121 * Math.Exp((18.678 - t / 234.5) * t / (257.14 + t)) / Kilopascals;
                var theta = 9.672e-3 - 4.942e-5 * kelvin + 6.436e-8 * kelvin * kelvin;
                var expected = p * (1 - w / p) * (1 - theta * p) / ((1 - w) * (1 - theta));
                Assert.Equal(expected, OxygenSaturation.BensonKrause(t, kPa) / OxygenSaturation.BensonKrause(t), 0.0002 * expected);
            }
        }
    }

    [Fact]
    [Proof(Id, Evidence.Derived, "Weiss 1970, Deep-Sea Research 17, 721-735, equation 4, coefficients from memory: an independent fit to other measurements")]
    public void An_independent_formula_agrees_in_fresh_and_salt_water()
    {
        for (var t = 0; t <= 40; t += 4)
        {
            for (var s = 0; s <= 40; s += 10)
            {
                var weiss = Weiss(t, s);
                Assert.Equal(weiss, OxygenSaturation.BensonKrause(t, Kilopascals, s), 0.006 * weiss);
            }
        }
    }

    [Fact]
    [Proof(Id, Evidence.Derived, "physics: less with warmth and salt, more with pressure")]
    public void It_falls_with_warmth_and_salt_and_rises_with_pressure() =>
        Gen.Select(Gen.Double[0, 39], Gen.Double[50, 109], Gen.Double[0, 39]).Sample((t, p, s) =>
        {
            var here = OxygenSaturation.BensonKrause(t, p, s);
            return here > 0 && OxygenSaturation.BensonKrause(t + 1, p, s) < here && OxygenSaturation.BensonKrause(t, p + 1, s) > here
                && OxygenSaturation.BensonKrause(t, p, s + 1) < here;
        });

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        var figure = WaterFormulas.OxygenSaturation.Apply(Of(77, Units.Fahrenheit), Of(13, Units.PoundPerSquareInch), Of(0.3, Units.Percent));
        Assert.Equal(OxygenSaturation.BensonKrause(25, 13 * 6.894757293168, 3), figure.Value, 1e-9);
        Assert.Equal("mg/L", figure.Unit!.Symbol);
    }

    [Fact]
    public void Every_elevation_of_the_pressure_formula_can_be_asked()
    {
        foreach (var h in new double[] { -430, 0, 1000, 5500 })
        {
            Assert.True(OxygenSaturation.BensonKrause(20, PressureAtElevation.StandardAtmosphere(h)) > 4);
        }
    }

    private static double Weiss(double t, double s)
    {
        var k = (t + 273.15) / 100;
        var millilitres = Math.Exp(-173.4292 + 249.6339 / k + 143.3483 * Math.Log(k) - 21.8492 * k
            + s * (-0.033096 + 0.014259 * k - 0.0017000 * k * k));
        return millilitres * 1.42905;
    }
}
