using CsCheck;
using Runnel.Engine.Heat;

namespace Runnel.Engine.Tests.Heat;

public class VapourTests
{
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    [InlineData(100, 101418)]
    [Proof("saturation-vapour-pressure", Evidence.Published, "ASHRAE Handbook Fundamentals (2017), chapter 1, table 3, as checked by PsychroLib: 300 ppm")]
    public void Vapour_pressure_is_ASHRAEs(double celsius, double pascals) =>
        Assert.Equal(pascals, SaturationVapourPressure.HylandWexler(celsius), 300e-6 * pascals);

    [Theory]
    [InlineData(0.01, 611.655)]
    [InlineData(20, 2339.32)]
    [InlineData(40, 7384.94)]
    [InlineData(60, 19946.4)]
    [InlineData(80, 47414.5)]
    [Proof("saturation-vapour-pressure", Evidence.Published, "IAPWS values in Huang 2018, as quoted by Embry, iemisc: 300 ppm")]
    public void Vapour_pressure_is_IAPWSs(double celsius, double pascals) =>
        Assert.Equal(pascals, SaturationVapourPressure.HylandWexler(celsius), 300e-6 * pascals);

    [Fact]
    [Proof("saturation-vapour-pressure", Evidence.Derived, "agrees with the Magnus form of the WMO guide (2008), 611.2 exp(17.62 t/(243.12 + t)), within 0.5 % from 0 to 50 °C")]
    public void Vapour_pressure_agrees_with_the_weather_services() =>
        Gen.Double[0, 50].Sample(t =>
        {
            var magnus = 611.2 * Math.Exp(17.62 * t / (243.12 + t));
            Assert.Equal(magnus, SaturationVapourPressure.HylandWexler(t), 0.005 * magnus);
        });

    [Fact]
    [Proof("saturation-vapour-pressure", Evidence.Derived, "rises with temperature; ice and water meet at 0 °C")]
    public void Vapour_pressure_rises_and_does_not_jump_at_freezing()
    {
        Gen.Double[-40, 99].Sample(t => Assert.True(SaturationVapourPressure.HylandWexler(t + 1) > SaturationVapourPressure.HylandWexler(t)));
        var (ice, water) = (SaturationVapourPressure.HylandWexler(-1e-9), SaturationVapourPressure.HylandWexler(0));
        Assert.Equal(water, ice, 2e-4 * water);
    }

    [Theory]
    [InlineData(0.01, 2500.9)]
    [InlineData(4, 2491.4)]
    [InlineData(10, 2477.2)]
    [InlineData(14, 2467.7)]
    [InlineData(18, 2458.3)]
    [Proof("latent-heat", Evidence.Published, "Engineering ToolBox, Water: heat of vaporization, steam-table values: 0.02 %")]
    public void Latent_heat_is_the_steam_tables(double celsius, double kilojoules) =>
        Assert.Equal(kilojoules, LatentHeat.Harrison(celsius), 2e-4 * kilojoules);

    [Fact]
    [Proof("latent-heat", Evidence.Published, "National Bureau of Standards, Circular 500, as printed in Geankoplis: 44 020 kJ/kmol at 25 °C; 0.1 %")]
    public void Latent_heat_at_25_degrees() =>
        Assert.Equal(44020 / 18.0153, LatentHeat.Harrison(25), 1e-3 * 2443);

    [Fact]
    [Proof("latent-heat", Evidence.Derived, "Clausius and Clapeyron: the slope of the vapour pressure gives the latent heat, an ideal gas assumed: 1 %")]
    public void Latent_heat_agrees_with_the_slope_of_the_vapour_pressure() =>
        Gen.Double[5, 45].Sample(t =>
        {
            const double vapourConstant = 0.461523;
            var slope = Math.Log(SaturationVapourPressure.HylandWexler(t + 0.5) / SaturationVapourPressure.HylandWexler(t - 0.5));
            var kelvin = t + 273.15;
            Assert.Equal(vapourConstant * kelvin * kelvin * slope, LatentHeat.Harrison(t), 0.01 * 2450);
        });
}
