using Runnel.Engine.Crops;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Numerics;
using Runnel.Engine.Water;
using Runnel.Engine.Year;

namespace Runnel.Engine.Tests.LivingYear;

public sealed class YearFormulaTests
{
    private const string Growers = "a trout growers' association note: 10 to 350 g at 11 °C in 200 days is 0.222";

    [Fact]
    [Proof("thermal-growth", Evidence.Published, Growers)]
    public void The_trout_of_a_growers_note_reach_their_weight() => Assert.Equal(350, ThermalGrowth.IwamaTautz(10, 0.222, 11, 200), 350 * 0.005);

    /// <summary>Yan and Hunt 1999 begin at 0 °C: their equation worked out apart from this code at an optimum of 24 and an end of 35 °C.</summary>
    [Theory]
    [InlineData(10, 0.3365)]
    [InlineData(16, 0.7131)]
    [InlineData(20, 0.9161)]
    [InlineData(24, 1)]
    [InlineData(28, 0.8908)]
    [InlineData(32, 0.5109)]
    [InlineData(0, 0)]
    [InlineData(35, 0)]
    [Proof("temperature-response", Evidence.Derived, "the equation of Yan and Hunt 1999 worked out apart from this code; 1 at the optimum, 0 at both ends")]
    public void Response_follows_the_equation(double temperature, double share) => Assert.Equal(share, TemperatureResponse.Beta(temperature, 0, 24, 35), 1e-4);

    [Fact]
    [Proof("temperature-response", Evidence.Derived, "limits: 1 at the optimum, 0 at and past both ends, wherever it begins")]
    public void Response_begins_where_it_is_told()
    {
        Assert.Equal(1, TemperatureResponse.Beta(24, 4, 24, 35), 1e-12);
        Assert.Equal(0, TemperatureResponse.Beta(4, 4, 24, 35), 1e-12);
        Assert.Equal(0, TemperatureResponse.Beta(-9, 4, 24, 35), 1e-12);
        Assert.True(TemperatureResponse.Beta(23, 4, 24, 35) is > 0.98 and < 1);
    }

    /// <summary>Published: Akbulut 2012, Black Sea trout at 10 °C: 140 mg/kg/h at 54 g, 95 at 507 g. The level is off by up to a fifth, within the span of the constant.</summary>
    [Theory]
    [InlineData(54, 140)]
    [InlineData(507, 95)]
    [Proof("fish-respiration-quiet", Evidence.Measured, "Akbulut 2012, Black Sea trout at 10 °C, 20 %")]
    public void Trout_in_cold_water_breathe_about_as_measured(double weight, double measured) =>
        Assert.Equal(measured, RoutineRespiration.Routine(weight, 10, 15), 0.2 * measured);

    [Fact]
    [Proof("fish-respiration-quiet", Evidence.Derived, "doubled by 10 °C")]
    public void Ten_degrees_double_respiration() => Assert.Equal(2, RoutineRespiration.Routine(80, 25, 25) / RoutineRespiration.Routine(80, 15, 25), 0.001);

    [Fact]
    [Proof("nitrifier-growth", Evidence.Published, "from memory: US EPA 1975, 0.47 exp(0.098 (T - 15))")]
    public void Growth_is_that_of_the_design_manual()
    {
        Assert.Equal(0.47, NitrifierGrowth.Arrhenius(15), 0.005);
        Assert.Equal(0.47 * Math.Exp(0.98), NitrifierGrowth.Arrhenius(25), 0.015);
    }

    /// <summary>From memory: textbook tables give pK1 6.58 at 0, 6.46 at 10, 6.38 at 20, 6.35 at 25 °C.</summary>
    [Theory]
    [InlineData(0, 6.58)]
    [InlineData(10, 6.46)]
    [InlineData(20, 6.38)]
    [InlineData(25, 6.35)]
    [Proof("carbonic-acid", Evidence.Published, "from memory: textbook tables of pK1")]
    public void Carbonic_acid_splits_as_tabled(double temperature, double pk) => Assert.Equal(pk, Carbonate.PlummerBusenberg(temperature), 0.006);

    /// <summary>From memory: log K0 = −1.47 at 25 °C, −1.11 at 0 °C.</summary>
    [Theory]
    [InlineData(0, -1.11)]
    [InlineData(25, -1.47)]
    [Proof("carbon-dioxide-dissolved", Evidence.Published, "from memory: textbook tables of Henry's constant")]
    public void Carbon_dioxide_dissolves_as_tabled(double temperature, double log) =>
        Assert.Equal(log, Math.Log10(Carbonate.Dissolved(temperature, 10000) / 0.01 / 44009.5), 0.006);

    [Fact]
    [Proof("ph-from-alkalinity", Evidence.Derived, "limits: the buffer equation with plenty of alkalinity, the root of K1 C without any")]
    public void PH_has_both_limits()
    {
        // pH = pK1 + log of bicarbonate over carbon dioxide, in moles.
        var buffered = Carbonate.PlummerBusenberg(20) + Math.Log10(100 / 50.043 / (8 / 44.0095));
        Assert.Equal(buffered, Carbonate.PH(20, 100, 8), 1e-3);
        Assert.Equal((Carbonate.PlummerBusenberg(20) - Math.Log10(8 / 44009.5)) / 2, Carbonate.PH(20, 0, 8), 1e-9);
    }

    [Fact]
    [Proof("aeration-by-stones", Evidence.Derived, "balance: what dissolves into water without oxygen is the stated share of what is blown in")]
    public void Stones_dissolve_their_share()
    {
        // 10 L/min is 0.6 m³/h with 167.4 g of oxygen; 3 % of it for each metre, at half a metre.
        Assert.Equal(167.4 * 0.015, Aeration.ByStones(10, 0.5) * 9.09, 1e-3);
    }

    [Fact]
    [Proof("aeration-by-fall", Evidence.Derived, "no fall makes nothing good; a higher one makes more good, never all")]
    public void A_higher_fall_brings_more()
    {
        Assert.Equal(0, Aeration.ByFall(0, 20), 1e-12);
        Assert.True(Aeration.ByFall(0.6, 20) > Aeration.ByFall(0.3, 20));
        Assert.InRange(Aeration.ByFall(1, 20), 0.3, 0.5);
    }

    /// <summary>Jin et al. 2023, means per incident mole of vertical farms, greenhouses and fields; flux of each is our reading, light taken up 75 %.</summary>
    [Theory]
    [InlineData(225, 0.55)]
    [InlineData(400, 0.39)]
    [InlineData(1200, 0.23)]
    [Proof("light-use", Evidence.CommonPractice, "Jin et al. 2023: the two constants were set near these three means, so this shows how near, no more")]
    public void Light_use_passes_near_the_means_it_was_set_by(double flux, double mean) => Assert.Equal(mean, 0.75 * LightUse.Saturating(flux), 0.18 * mean);

    [Fact]
    [Proof("light-taken-up", Evidence.Derived, "limits: none without leaves, k L for few, all for many")]
    public void Leaves_take_up_light()
    {
        Assert.Equal(0, LightUse.MonsiSaeki(0), 1e-15);
        Assert.Equal(0.7 * 1e-4, LightUse.MonsiSaeki(1e-4), 1e-8);
        Assert.Equal(1, LightUse.MonsiSaeki(20), 1e-5);
    }

    /// <summary>Hanan 1998, greenhouse rule: half to 87 % of the sun on a canopy evaporates water; 10 MJ/m²/d give 2 to 3.5 L at 2.45 MJ/L.</summary>
    [Fact]
    [Proof("transpiration", Evidence.Published, "Hanan, Greenhouses, chapter 5: 50 to 87 % of the solar energy on a canopy")]
    public void A_closed_stand_turns_over_half_the_sun_into_vapour()
    {
        // 10 MJ/m²/d as 231 W/m² over 12 h; a vapour deficit of 0.8 kPa day and night.
        var day = 12 * Transpiration.Baille(231.5, 3, 0.8) + 12 * Transpiration.Baille(0, 3, 0.8);
        Assert.InRange(day * 2.45 / 10, 0.50, 1.0);
        Assert.InRange(12 * Transpiration.Baille(231.5, 3, 0) * 2.45 / 10, 0.5, 0.87);
    }

    [Fact]
    public void A_rotation_fills_its_beds_and_gives_what_was_wished()
    {
        // FAO Technical Paper 589, section 8.1 (from memory): 25 heads a week, four weeks, 25 on each m²: 4 m². A head of 150 g.
        var rotation = SowingPlan.ForWeekly(25 * 0.15, 25 * 0.15, 28);
        Assert.Equal(4, rotation.Stands);
        Assert.Equal(4, rotation.AreaOfAll, 1e-9);
    }
}
