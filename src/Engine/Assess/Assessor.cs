using Runnel.Engine.Figures;
using Runnel.Engine.Heat;
using Runnel.Engine.Numerics;
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
        DrawRanges(assessment, desk, weather, draws, progress, cancel);
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
        Advice.UnusedPrices(desk, pricing.Unused, needs.Select(n => n.Part));
        UnderGlass.Compare(desk, weather);
        return new Assessment
        {
            Plan = plan,
            Figures = desk.Book,
            Findings = [.. desk.Findings.OrderByDescending(f => f.Severity)],
            Build = build,
            Run = run,
            Balance = balance,
        };
    }

    /// <summary>Figures of a changed plan, at the same draw.</summary>
    internal static Assessment Changed(Desk desk, LoopPlan plan, Climate? weather)
    {
        var other = new Desk(plan, desk.Shelf, desk.Draw, desk.Taken);
        return Once(other, weather);
    }

    private static void DrawRanges(Assessment likely, Desk desk, Climate? weather, int draws, IProgress<double>? progress, CancellationToken cancel)
    {
        var ranges = desk.Taken.Values.Select(f => ((Given)f.How).Estimate).Where(e => e.IsRange).ToList();
        if (ranges.Count == 0)
        {
            return;
        }
        var column = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var range in ranges)
        {
            column.TryAdd(range.From.Path, column.Count);
        }
        var hypercube = new LatinHypercube(column.Count, draws, Seed);
        var figures = likely.Figures.All;
        var drawn = new Dictionary<string, double[]>(StringComparer.Ordinal);
        var filled = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var k = 0; k < draws; k++)
        {
            cancel.ThrowIfCancellationRequested();
            var draw = k;
            var one = new Desk(desk.Plan, desk.Shelf,
                e => e.IsRange && column.TryGetValue(e.From.Path, out var c) ? Distributions.At(e, hypercube[c, draw]) : e.Likely);
            foreach (var figure in Once(one, weather).Figures.All)
            {
                if (!drawn.TryGetValue(figure.Id!, out var values))
                {
                    drawn.Add(figure.Id!, values = new double[draws]);
                    filled.Add(figure.Id!, 0);
                }
                values[filled[figure.Id!]++] = figure.Si;
            }
            progress?.Report((k + 1.0) / draws);
        }
        foreach (var figure in figures)
        {
            if (drawn.TryGetValue(figure.Id!, out var values))
            {
                var sorted = values.AsSpan(0, filled[figure.Id!]);
                sorted.Sort();
                var (low, high) = (Distributions.Quantile(sorted, 0.1), Distributions.Quantile(sorted, 0.9));
                // Draws that differ by rounding only are no range.
                if (high - low > 1e-12 * Math.Max(Math.Abs(low), Math.Abs(high)))
                {
                    figure.SetRange(Math.Min(low, figure.Si), Math.Max(high, figure.Si));
                }
            }
        }
    }
}
