using CsCheck;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Quantities;

namespace Runnel.App.Tests;

/// <summary>Does it fit: balance, temperatures, heat and light of small plans.</summary>
public sealed class FitTests
{
    private static Estimate Given(double value, Unit unit) => Estimate.Of(value, unit, new Origin("given", "given"));

    // Published: FAO Technical Paper 589 (2014), example 8.1 (numbers from memory): 4 m² at 50 g/m²/d feed 200 g a day, 10 to 20 kg of fish
    // at 2 to 1 % a day, and appendix 4: 7.5 g of ammonia, 13.2 m² of filter.
    [Theory]
    [InlineData(2.0, 10.0)]
    [InlineData(1.0, 20.0)]
    public void Four_square_metres_of_lettuce_as_the_handbook_works_them_out(double ration, double fish)
    {
        var inputs = BalanceInputs.Handbook with
        {
            Ratio = Estimate.Of(50, Units.GramPerSquareMetreDay, new Origin("r", "r")),
            Ration = Estimate.Of(ration, Units.PercentPerDay, new Origin("b", "b")),
        };
        var solved = BalanceSolver.Solve(BalanceEnd.Beds, Given(4, Units.SquareMetre), inputs, draws: 0);

        Assert.Equal(200, solved["balance.feed"].Value, 1e-9);
        Assert.Equal(fish, solved["balance.fish"].Value, 1e-9);
        Assert.Equal(13.2, solved["balance.filter"].Value, 0.1);
    }

    [Fact]
    public void From_any_end_the_same_balance_comes_back()
    {
        var inputs = BalanceInputs.Handbook;
        Gen.Double[0.5, 30].Sample(area =>
        {
            var beds = BalanceSolver.Solve(BalanceEnd.Beds, Given(area, Units.SquareMetre), inputs, 0);
            foreach (var (end, id, unit) in new[]
                { (BalanceEnd.Feed, "balance.feed", Units.GramPerDay), (BalanceEnd.Fish, "balance.fish", Units.Kilogram), (BalanceEnd.Tank, "balance.tank", Units.Litre) })
            {
                var other = BalanceSolver.Solve(end, Given(beds[id].Value, unit), inputs, 0);
                Assert.All(beds.All, f => Assert.Equal(f.Si, other[f.Id!].Si, 1e-9 * Math.Abs(f.Si)));
            }
        }, iter: 50);
    }

    [Fact]
    public void The_tightest_limit_is_named_with_its_margin()
    {
        // 60 fish of 500 g in 800 L: 30 kg where the handbook holds 16.
        var assessment = Plans.Assess("""
            fish: [{species: Nile tilapia, number: 60, weight: 500 g}]
            crops: [{crop: basil}]
            heaters: {heater: {watts: 2000 W, keep: 28 °C}}
            feed: {ratio: 60 g/m2/d}
            """);

        var beds = assessment.Balance.Limits.Single(l => l.Id == "beds");
        Assert.Equal(120, beds.Allows.Value, 1e-9);
        var stocking = assessment.Balance.Limits.Single(l => l.Id == "stocking");
        Assert.Equal(16.0 / 30 - 1, stocking.Margin.Si, 1e-9);
        Assert.Equal(assessment.Balance.Limits.MinBy(l => l.Margin.Si)!.Id, assessment.Balance.Limits[0].Id);
        Assert.Contains(assessment.Findings, f => f.Code == "fish.stocking");
    }

    [Theory]
    [InlineData("heaters: {heater: {watts: 500 W, keep: 21 °C}}\nfish: [{species: rainbow trout, number: 5, weight: 100 g}]", "fish.too-warm")]
    [InlineData("fish: [{species: Nile tilapia, number: 5, weight: 100 g}]", "fish.too-cold")]
    [InlineData("heaters: {heater: {watts: 5 W, keep: 28 °C}}", "heat.heater-too-small")]
    [InlineData("pumps: {pump: {watts: 5 W, flow: 100 L/h}}", "flow.turnover")]
    [InlineData("pumps: {pump: {watts: 5 W, flow: 100 L/h}}", "power.near-water")]
    [InlineData("lamps: {lamp: {watts: 10 W, hours: 12 h, kind: compact fluorescent, lumens: 600 lm}}\ncrops: [{crop: basil}]", "light.too-little")]
    [InlineData("fish: [{species: nil tilapia, number: 5, weight: 100 g}]", "fish.unknown")]
    [InlineData("prices: {expnded clay: 20 USD per 50 L}", "price.unused")]
    [InlineData("tariff: {energy: [{price: 0.2 USD per kWh, days: weekdays}]}\npumps: {pump: {watts: 5 W}}", "tariff.gap")]
    [InlineData("supplies: {potassium hydroxide: {use: 10 g}}", "safety.caustic")]
    public void What_does_not_fit_is_said(string more, string code)
    {
        var finding = Plans.Assess(more).Findings.FirstOrDefault(f => f.Code == code);

        Assert.NotNull(finding);
        var style = new Style();
        Assert.All([finding.Saw, finding.Wanted, finding.Do], s => Assert.NotEmpty(style.Print(s)));
    }

    [Fact]
    public void Fish_without_anything_for_bacteria_are_in_grave_danger()
    {
        var assessment = Plans.Assess(
            "fish: [{species: goldfish, number: 5, weight: 20 g}]", start: """
            runnel: 1
            name: bare tank
            currency: USD
            place: {setting: indoors}
            vessels: {tank: {role: fish tank, shape: box 50 x 50 x 50 cm}}

            """);

        Assert.Contains(assessment.Findings, f => f is { Code: "filter.none", Severity: Severity.Grave });
        Assert.Equal(Severity.Grave, assessment.Findings[0].Severity);
    }

    [Fact]
    public void More_insulation_never_costs_more_heat()
    {
        static double Energy(double mm) => Plans.Assess("""
              other: {role: sump, shape: box 60 x 60 x 60 cm, insulation: THICK mm EPS}
            heaters: {heater: {watts: 5000 W, keep: 26 °C}}
            """.Replace("THICK", mm.ToString("0.0"))).Figures["energy.year.heater"].Value;

        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100]).Sample((a, b) =>
            Assert.True(Energy(Math.Min(a, b)) >= Energy(Math.Max(a, b)) - 1e-9), iter: 40);
    }

    [Fact]
    public void Heat_lost_is_conductance_times_difference_when_nothing_lies_open()
    {
        var assessment = Plans.Assess("heaters: {heater: {watts: 5000 W, keep: 26 °C}}");

        Assert.Equal(8 * assessment.Figures["heat.conductance"].Si, assessment.Figures["heat.loss.month.1"].Si, 1e-9);
        // All of it from the heater: no pump gives heat here.
        Assert.Equal(assessment.Figures["heat.loss.month.1"].Si * 8.760, assessment.Figures["energy.year.heater"].Value, 1e-6);
    }

    [Fact]
    public void A_plan_in_us_units_gives_the_same_figures()
    {
        const string Start = """
            runnel: 1
            name: units
            currency: USD
            place: {setting: indoors, air: AIR}
            vessels:
              tank: {role: fish tank, shape: box SIDE x SIDE x SIDE, level: LEVEL}
              bed: {role: media bed, shape: box LONG x WIDE x DEEP, media: expanded clay, media depth: DEEP}
            heaters: {heater: {watts: 300 W, keep: KEEP}}
            fish: [{species: goldfish, number: 9, weight: HEAVY}]
            """;
        static string Fill(string air, string side, string level, string longest, string wide, string deep, string keep, string heavy) => Start
            .Replace("AIR", air).Replace("SIDE", side).Replace("LEVEL", level).Replace("LONG", longest)
            .Replace("WIDE", wide).Replace("DEEP", deep).Replace("KEEP", keep).Replace("HEAVY", heavy);
        var metric = Plans.Assess("", start: Fill("15 °C", "91.44 cm", "60.96 cm", "243.84 cm", "121.92 cm", "30.48 cm", "22.5 °C", "113.398093 g"));
        var us = Plans.Assess("", start: Fill("59 F", "3 ft", "2 ft", "8 ft", "4 ft", "12 in", "72.5 F", "4 oz"));

        // Parts are named after the size as it is written.
        Assert.All(metric.Figures.All.Where(f => !f.Id!.StartsWith("part.", StringComparison.Ordinal)), f => Assert.Equal(f.Si, us.Figures[f.Id!].Si, 1e-6 * Math.Max(1e-9, Math.Abs(f.Si))));
    }
}
