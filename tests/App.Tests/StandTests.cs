using CsCheck;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Frame;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files;
using Runnel.Files.Tests;

namespace Runnel.App.Tests;

/// <summary>The check of the stand on plans as they are written.</summary>
public sealed class StandTests
{
    private const string Stand = """
        stand:
          legs: {size: 45 x 90 mm, length: 80 cm, count: 4, use: leg, carries: bed}
          rails: {size: 45 x 90 mm, length: 1.2 m, count: 2, use: rail, carries: bed, wood: C24}
          braces: {size: 1x4, length: 1 m, count: 4}

        """;

    private const string Start = """
        # invented
        runnel: 1
        name: test stand
        currency: USD
        place: {setting: indoors, air: 18 °C}
        vessels:
          tank: {role: fish tank, shape: box 100 cm x 100 cm x 100 cm, level: 80 cm}
          bed: {role: media bed, shape: box 110 cm x 70 cm x 32 cm, media: expanded clay, above floor: 80 cm}

        """;

    [Fact]
    public void A_stand_is_checked_as_it_is_written()
    {
        var plan = Plans.File(Stand, Start).Plan!;
        var result = Check(plan, 180);
        Assert.Equal(["legs", "rails"], result.Pieces.Select(p => p.Lumber.Name));
        Assert.Equal("C24", result.Pieces[1].Values.Name);
        Assert.All(result.Pieces, p => Assert.Equal(90, p.Load.Si, 1e-9));
        // Derived by hand: 90 kg on 1.2 m are 735 N/m, and 24 N/m its own weight, M = 137 N·m, S = 60.75 cm³, 2.25 MPa.
        Assert.Equal(2.25, result.Pieces[1].Checks.Single(c => c.Mode == "bending").Demand.Value, 0.01);
        Assert.DoesNotContain(result.Findings, f => f.Code == "stand.unchecked");
        Assert.DoesNotContain(result.Findings, f => f.Where == "braces");
    }

    [Fact]
    public void A_vessel_that_is_not_there_cannot_be_carried()
    {
        var file = PlanFile.Parse(Start + Stand.Replace("carries: bed,", "carries: bad,", StringComparison.Ordinal), "test.yaml");
        Assert.Contains(file.Errors, e => e.Read == "bad");
    }

    [Fact]
    public void A_tower_of_water_on_thin_rails_is_grave() =>
        Assert.Contains(Check(Plans.File(Stand, Start).Plan!, 2500).Findings, f => f is { Severity: Severity.Grave, Code: "stand.overloaded" });

    [Fact]
    public void Every_random_stand_gets_an_answer() => RandomPlans.Texts.Sample(text =>
    {
        if (PlanFile.Parse(text, "random.yaml").Plan is not { } plan)
        {
            return;
        }
        foreach (var mass in new[] { 0, 1e-3, 400, 1e6, 1e9 })
        {
            var result = Check(plan, mass);
            Assert.All(result.Pieces.SelectMany(p => p.Checks), c => Assert.True(double.IsFinite(c.Ratio.Si) && c.Ratio.Si >= 0));
            Assert.Equal(result.Pieces.Count, result.Pieces.Count(p => p.Strength is not null));
            var style = new Style(plan.Units);
            Assert.All(result.Findings, f => Assert.NotEmpty(style.Print(f.Saw) + style.Print(f.Wanted) + style.Print(f.Do)));
        }
    }, iter: 600);

    private static StandResult Check(LoopPlan plan, double mass) => StandCheck.Check(
        plan, plan.Vessels.Keys.ToDictionary(v => v, v => Figure.Constant(mass, Units.Kilogram, $"{v}, full", Source.Definition("a test")), StringComparer.Ordinal), Figure.Given);
}
