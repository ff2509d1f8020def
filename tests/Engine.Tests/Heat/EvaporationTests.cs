using CsCheck;
using Runnel.Engine.Heat;

namespace Runnel.Engine.Tests.Heat;

public class EvaporationTests
{
    [Fact]
    [Proof("evaporation", Evidence.Derived, "the IP form (95 + 0.425 V)(p_w − p_a)/Y printed by Smith, Löf and Jones 1998, written independently here: 1 %")]
    public void The_metric_and_the_American_form_agree() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[5, 40], Gen.Double[10, 95], Gen.Double[0, 0.5]).Sample((water, air, humidity, speed) =>
        {
            var inPounds = Math.Max(0, AmericanForm(water, air, humidity, speed));
            Assert.Equal(inPounds, Evaporation.Carrier(water, air, humidity, speed, 1), 0.01 * inPounds + 1e-12);
        });

    [Theory]
    [InlineData(0, 1067)]
    [InlineData(20, 63)]
    [InlineData(50, 29)]
    [Proof("evaporation", Evidence.Derived, "the mix of metric constants with inches of mercury and feet a minute, found in public texts, is low by that factor")]
    public void The_mixed_form_of_public_texts_is_not_ours(double feetPerMinute, double factor)
    {
        // 0.089 + 0.0782 V with inches of mercury, feet a minute and Btu/lb, read as lb/h·ft².
        var mixed = (0.089 + 0.0782 * feetPerMinute) * InchesOfMercury(28, 27, 50) / BtuPerPound(28) * KilogramsPerSquareMetre;
        var ours = Evaporation.Carrier(28, 27, 50, feetPerMinute * 0.3048 / 60, 1);
        Assert.Equal(factor, ours / mixed, 0.02 * factor);
    }

    [Theory]
    [InlineData(28, 28, 0.1360)]
    [InlineData(28, 29, 0.1171)]
    [InlineData(28, 30, 0.0968)]
    [InlineData(29, 28, 0.1651)]
    [InlineData(29, 29, 0.1463)]
    [InlineData(29, 30, 0.1268)]
    [InlineData(30, 28, 0.1959)]
    [InlineData(30, 29, 0.1771)]
    [Proof("evaporation-shah", Evidence.Published, "Shah's look-up table for undisturbed pools at 50 % relative humidity, as transcribed in a public program: 0.3 %")]
    public void Shahs_own_table(double water, double air, double kilograms) =>
        Assert.Equal(kilograms, Evaporation.Shah(water, air, 50), 0.003 * kilograms);

    [Fact]
    [Proof("evaporation", Evidence.Derived, "two unlike formulas, by air speed and by rising air: within 30 % for still rooms over which both claim to hold")]
    [Proof("evaporation-shah", Evidence.Derived, "two unlike formulas, by air speed and by rising air: within 30 % for still rooms over which both claim to hold")]
    public void Two_unlike_formulas_agree_in_a_still_room() =>
        Gen.Select(Gen.Double[20, 30], Gen.Double[0, 5], Gen.Double[40, 65]).Sample((water, cooler, humidity) =>
        {
            var shah = Evaporation.Shah(water, water - cooler, humidity);
            Assert.InRange(Evaporation.Carrier(water, water - cooler, humidity) / shah, 0.7, 1.3);
        });

    [Theory]
    [InlineData(28, 27, 50)]
    [InlineData(25, 20, 60)]
    public void Published_rules_differ_by_two_and_a_half_at_one_point(double water, double air, double humidity)
    {
        // A third rule in print: g = (25 + 19 v)(x_s − x), kg/m²/h, humidity ratios in kg/kg.
        static double Ratio(double pascals) => 0.622 * pascals / (101325 - pascals);
        var third = (25 + 19 * 0.1) * (Ratio(SaturationVapourPressure.HylandWexler(water))
            - Ratio(humidity / 100 * SaturationVapourPressure.HylandWexler(air)));
        double[] rules =
        [
            third,
            Evaporation.Carrier(water, air, humidity, 0.1, 1),
            Evaporation.Carrier(water, air, humidity, 0.1, 0.74),
            Evaporation.Carrier(water, air, humidity),
            Evaporation.Shah(water, air, humidity),
        ];
        Assert.Equal(2.4, rules.Max() / rules.Min(), 0.1);
        Assert.Equal(rules.Min(), Evaporation.Carrier(water, air, humidity));
    }

    [Fact]
    [Proof("evaporation", Evidence.Derived, "never negative; more with wind; less with moister air; none into saturated air as warm as the water")]
    [Proof("evaporation-shah", Evidence.Derived, "never negative; less with moister air; none into saturated air as warm as the water")]
    public void Evaporation_goes_the_right_way()
    {
        Gen.Select(Gen.Double[0, 50], Gen.Double[-40, 50], Gen.Double[0, 95], Gen.Double[0, 2]).Sample((water, air, humidity, speed) =>
        {
            var rate = Evaporation.Carrier(water, air, humidity, speed);
            Assert.True(rate >= 0);
            Assert.True(Evaporation.Carrier(water, air, humidity + 5, speed) <= rate);
            Assert.True(Evaporation.Carrier(water, air, humidity, speed + 1) >= rate);
            var still = Evaporation.Shah(water, air, humidity);
            Assert.True(still >= 0);
            Assert.True(Evaporation.Shah(water, air, humidity + 5) <= still + 1e-12);
        });
        Assert.Equal(0, Evaporation.Carrier(25, 25, 100), 12);
        Assert.Equal(0, Evaporation.Shah(25, 25, 100), 12);
    }

    [Theory]
    [InlineData(10, 688.11)]
    [InlineData(18, 682.86)]
    [Proof("evaporation-heat", Evidence.Published, "Engineering ToolBox, Water: heat of vaporization in Wh/kg, steam-table values: 0.02 %")]
    public void A_kilogram_an_hour_takes_the_tables_watts(double celsius, double watts) =>
        Assert.Equal(watts, Evaporation.Heat(1, 1, celsius), 2e-4 * watts);

    private const double KilogramsPerSquareMetre = 0.45359237 / (0.3048 * 0.3048);

    private static double AmericanForm(double water, double air, double humidity, double metresPerSecond) =>
        (95 + 0.425 * metresPerSecond / 0.3048 * 60) * InchesOfMercury(water, air, humidity) / BtuPerPound(water) * KilogramsPerSquareMetre;

    private static double InchesOfMercury(double water, double air, double humidity) =>
        (SaturationVapourPressure.HylandWexler(water) - humidity / 100 * SaturationVapourPressure.HylandWexler(air)) / 3386.389;

    // Linear between 1075.2 Btu/lb at 0 °C and 1042.6 at 32.2 °C (90 °F), steam tables.
    private static double BtuPerPound(double celsius) => 1075.2 - (1075.2 - 1042.6) / 32.2 * celsius;
}
