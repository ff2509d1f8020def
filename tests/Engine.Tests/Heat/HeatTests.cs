using CsCheck;
using Runnel.Engine.Heat;

namespace Runnel.Engine.Tests.Heat;

public class HeatTests
{
    private const double BtuPerHour = 0.29307107;
    private const double ImperialTransmittance = 5.678263;

    [Theory]
    [InlineData(0, 0.0355, 7.88, 0.005)]
    [InlineData(25, 0.0355, 1.20, 0.005)]
    [InlineData(50, 0.029, 0.540, 0.0005)]
    [InlineData(50, 0.026, 0.488, 0.0005)]
    [Proof("wall-transmittance", Evidence.Derived, "resistances added by hand: 2 mm polyethylene of 0.45 W/mK, 500 inside, 8.3 outside")]
    public void Resistances_add_up(double millimetres, double conductivity, double transmittance, double tolerance) =>
        Assert.Equal(transmittance, WallTransmittance.Iso6946(2, 0.45, millimetres, conductivity), tolerance);

    [Fact]
    [Proof("wall-transmittance", Evidence.Published, "single glazing 1.0 to 1.2 Btu/h·ft²·°F (Sanford, Extension Foundation); films of WAC 51-11-0526 and glass of 1.0 W/mK (ASHRAE via C. Bell, ht)")]
    public void A_single_pane_is_the_extension_services()
    {
        var pane = WallTransmittance.Iso6946(3, 1.0, 0, 1, ImperialTransmittance / 0.68, ImperialTransmittance / 0.17);
        Assert.InRange(pane / ImperialTransmittance, 1.0, 1.2);
    }

    [Fact]
    [Proof("wall-transmittance", Evidence.Derived, "bounds: never above the outer film alone, and near conductivity over thickness for a very thick layer")]
    public void A_wall_is_bounded_by_its_worst_layer()
    {
        Assert.True(WallTransmittance.Iso6946(0.001, 500, 0, 1) < 8.3);
        Assert.Equal(0.035, WallTransmittance.Iso6946(0, 1, 1000, 0.035), 0.0005);
    }

    [Fact]
    [Proof("wall-transmittance", Evidence.Derived, "more insulation never loses more")]
    [Proof("wall-loss", Evidence.Derived, "more insulation never loses more")]
    public void More_insulation_never_loses_more() =>
        Gen.Select(Gen.Double[0.5, 50], Gen.Double[0.02, 1], Gen.Double[0, 300], Gen.Double[0, 300], Gen.Double[0, 40])
            .Sample((wall, conductivity, a, b, kelvin) =>
            {
                var thin = WallTransmittance.Iso6946(wall, 0.45, Math.Min(a, b), conductivity);
                var thick = WallTransmittance.Iso6946(wall, 0.45, Math.Max(a, b), conductivity);
                Assert.True(HeatLoss.ThroughWall(thick, 3, kelvin) <= HeatLoss.ThroughWall(thin, 3, kelvin));
            });

    [Fact]
    [Proof("wall-loss", Evidence.Published, "a greenhouse supplier's example: 96 ft², 1.1 Btu/h·ft²·°F, 65 °F: 6864 Btu/h (its area is the floor's, not the glazing's)")]
    public void A_suppliers_heat_loss_as_printed()
    {
        var watts = HeatLoss.ThroughWall(1.1 * ImperialTransmittance, 96 * 0.09290304, 65 / 1.8);
        Assert.Equal(6864, watts / BtuPerHour, 1);
    }

    [Fact]
    [Proof("surface-loss", Evidence.Derived, "none at equal temperatures; the sign turns with the difference; the default is ASHRAE's 0.61 ft²·h·°F/Btu")]
    public void Warm_water_warms_cooler_air_and_the_other_way_round()
    {
        Assert.Equal(0, HeatLoss.Newton(1, 22, 22));
        Assert.Equal(-HeatLoss.Newton(1, 25, 20), HeatLoss.Newton(1, 20, 25), 12);
        Assert.Equal(ImperialTransmittance / 0.61, HeatLoss.Newton(1, 21, 20), 0.02);
    }

    [Fact]
    [Proof("surface-loss", Evidence.Derived, "radiation between black walls at 25 °C, 4 σ T³, plus still-air convection from a warm plate facing up, within a fifth")]
    public void The_surface_coefficient_is_radiation_plus_convection()
    {
        var radiation = 0.95 * 4 * 5.670374e-8 * Math.Pow(295.65, 3);
        // Turbulent natural convection of a plate facing up: 1.52 ΔT^(1/3) W/m²K in air.
        var convection = 1.52 * Math.Cbrt(5);
        Assert.Equal(HeatLoss.UsualSurfaceCoefficient, radiation + convection, 0.2 * HeatLoss.UsualSurfaceCoefficient);
    }

    [Fact]
    [Proof("heat-to-warm", Evidence.Derived, "definition of the Btu (NIST SP 811): it warms a pound of water by 1 °F; here 1 kg is 1 L")]
    [Proof("make-up-heat", Evidence.Derived, "the same heat spread over a day")]
    public void A_Btu_warms_a_pound_by_a_degree_Fahrenheit()
    {
        const double btu = 1.05505585262 / 3600;
        Assert.Equal(btu, WarmingWater.Heat(0.45359237, 1 / 1.8), 1e-7 * btu);
        Assert.Equal(WarmingWater.Heat(40, 12) * 1000 / 24, WarmingWater.MeanPower(40, 12), 9);
    }

    [Theory]
    [InlineData(0, 999.84, 4.2199)]
    [InlineData(10, 999.70, 4.1955)]
    [InlineData(20, 998.21, 4.1844)]
    [InlineData(30, 995.65, 4.1801)]
    [InlineData(40, 992.22, 4.1796)]
    [Proof("heat-to-warm", Evidence.Derived, "density times specific heat of steam tables (IAPWS, values from memory): 1 %")]
    public void A_litre_takes_the_steam_tables_heat(double celsius, double density, double kilojoules)
    {
        var perLitre = density / 1000 * kilojoules / 3.6;
        Assert.True(Math.Abs(WarmingWater.Heat(1000, 1) / perLitre - 1) < 0.01, $"at {celsius} °C");
    }

    [Fact]
    [Proof("heater-energy", Evidence.Derived, "by hand: 100 W short by 40 W over 50 h is 3 kWh; never negative")]
    public void A_heater_adds_what_is_missing()
    {
        Assert.Equal(3, HeaterEnergy.Balance(100, 40, 50), 12);
        Assert.Equal(0, HeaterEnergy.Balance(30, 40, 50));
        Assert.Equal(0, HeaterEnergy.Balance(-30, 0, 50));
    }

    [Fact]
    [Proof("heater-energy", Evidence.Derived, "a period cut in two never takes less than the whole from its mean")]
    public void Months_never_take_less_than_their_mean() =>
        Gen.Select(Gen.Double[-200, 500], Gen.Double[-200, 500], Gen.Double[0, 200]).Sample((first, second, other) =>
        {
            var parts = HeaterEnergy.Balance(first, other, 100) + HeaterEnergy.Balance(second, other, 100);
            Assert.True(parts >= HeaterEnergy.Balance((first + second) / 2, other, 200) - 1e-9);
        });
}
