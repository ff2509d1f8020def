using Runnel.Engine.Figures;
using Runnel.Engine.Heat;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Assess;

/// <summary>Turns a plan into figures and findings.</summary>
public static class Assessor
{
    /// <summary>Seed of the draws: the same plan gives the same ranges on every machine.</summary>
    public const ulong Seed = 20261125;

    /// <summary>How many draws give ranges that are steady to about a twentieth of their width.</summary>
    public const int UsualDraws = 256;

    /// <summary>The assessment with every input at its likely value; ranges are drawn when asked for.</summary>
    /// <param name="plan">The grower's plan.</param>
    /// <param name="shelf">Rows of the catalogue.</param>
    /// <param name="weather">A weather file summed up, in place of the plan's climate by name.</param>
    /// <param name="draws">How many draws; 0 for none.</param>
    /// <param name="progress">Told the share of draws done, 0 to 1.</param>
    /// <param name="cancel">Stops between draws.</param>
    public static Assessment Assess(
        LoopPlan plan, Shelf shelf, Climate? weather = null, int draws = 0, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentOutOfRangeException.ThrowIfNegative(draws);
        var desk = new Desk(plan, shelf, e => e.Likely);
        var assessment = Once(desk, weather);
        if (draws == 0)
        {
            return assessment;
        }
        Ranges.Draw(
            assessment.Figures, [.. desk.Taken.Values.Select(f => ((Given)f.How).Estimate)], draws,
            draw => Once(new Desk(plan, shelf, draw), weather).Figures, progress, cancel);
        return assessment with { Draws = draws };
    }

    private static Assessment Once(Desk desk, Climate? weather)
    {
        var plan = desk.Plan;
        var vessels = Vessels.Measure(desk);
        var warmth = Warmth.Read(desk, weather, vessels);
        var living = Living.Read(desk, vessels);
        var balance = living.Solve(desk, vessels, warmth.Water?.MinBy(w => w.Si));
        var loads = Loads.Read(desk, warmth);
        var needs = Parts.List(desk, vessels, living);
        var pricing = new Pricing(desk);
        var build = BuildCost.Price(desk, needs, pricing);
        var run = RunCost.Add(desk, loads, living, build, pricing);
        Lighting.Read(desk, vessels, living, warmth);
        Fit.Check(desk, vessels, living, warmth, balance);
        Advice.Cautions(desk, vessels, living);
        Advice.Forgotten(desk, needs, living);
        Advice.UnusedPrices(desk, pricing.Unused, needs.Select(n => n.Part));
        var levels = LevelCheck.Read(desk, vessels);
        UnderGlass.Compare(desk, weather);
        return new Assessment
        {
            Plan = plan,
            Figures = desk.Book,
            Findings = [.. desk.Findings.OrderByDescending(f => f.Severity)],
            Build = build,
            Run = run,
            Balance = balance,
            Levels = levels,
        };
    }

    /// <summary>Figures of a changed plan, at the same draw.</summary>
    internal static Assessment Changed(Desk desk, LoopPlan plan, Climate? weather)
    {
        var other = new Desk(plan, desk.Shelf, desk.Draw, desk.Taken);
        return Once(other, weather);
    }
}
