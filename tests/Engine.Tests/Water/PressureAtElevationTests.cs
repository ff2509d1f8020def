using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Water;

public sealed class PressureAtElevationTests
{
    private const string Id = "pressure-at-elevation";

    [Theory]
    [InlineData(0, 760)]
    [InlineData(500, 714)]
    [InlineData(1000, 671)]
    [InlineData(1500, 631)]
    [InlineData(2000, 594)]
    [InlineData(2500, 560)]
    [Proof(Id, Evidence.Published, "Dussart and Francis-Boeuf 1949, table of mean pressure, mmHg; a real mean, not the convention: 0.6 %")]
    public void A_published_mean_table_agrees(double elevation, double torr) =>
        Assert.Equal(torr / 760 * 101.325, PressureAtElevation.StandardAtmosphere(elevation), 0.006 * torr / 760 * 101.325);

    [Fact]
    [Proof(Id, Evidence.Published, "FAO Irrigation and Drainage Paper 56 (1998), example 2: 81.8 kPa at 1800 m, from air of 20 °C, not 15 °C: 0.5 %")]
    public void The_example_of_FAO_56_agrees() => Assert.Equal(81.8, PressureAtElevation.StandardAtmosphere(1800), 0.005 * 81.8);

    [Fact]
    [Proof(Id, Evidence.Derived, "air at rest: exponent g M / (R L), slope L / T0, with the constants of the standard atmosphere")]
    public void Its_constants_follow_from_gravity_and_the_gas_law()
    {
        const double g = 9.80665, molar = 0.0289644, gas = 8.31432, lapse = 0.0065, t0 = 288.15;
        for (var h = -400; h <= 5500; h += 100)
        {
            var expected = 101.325 * Math.Pow(1 - lapse / t0 * h, g * molar / (gas * lapse));
            Assert.Equal(expected, PressureAtElevation.StandardAtmosphere(h), 1e-4);
        }
    }

    [Fact]
    public void Feet_give_the_same_as_metres() =>
        Assert.Equal(
            PressureAtElevation.StandardAtmosphere(1524), WaterFormulas.PressureAtElevation.Apply(Of(5000, Units.Foot)).Value, 1e-9);
}
