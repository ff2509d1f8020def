using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Screens.Views;

/// <summary>One part of the running bill with its share of the year and its electricity.</summary>
public sealed record RunRow(RunLine Line, Figure? Share, Figure? Energy)
{
    /// <summary>All parts of a bill, in its order.</summary>
    public static IReadOnlyList<RunRow> Of(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return [.. assessment.Run.Lines.Select(l => new RunRow(l, ShareOf(assessment, l.Id), assessment.Figures.Find($"energy.year.{l.Id}")))];
    }

    /// <summary>A part's share of the year's cost, as a figure of its own; null without a price.</summary>
    public static Figure? ShareOf(Assessment assessment, string id)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var line = assessment.Run.Lines.FirstOrDefault(l => l.Id == id);
        return line?.Year is { } year && assessment.Figures.Find("run.year.total") is { Si: > 0 } total
            ? (year / total).Called($"{line.Label}, share of the year", Units.Percent)
            : null;
    }

    /// <summary>The share in whole percent, or tenths below ten.</summary>
    public string ShareText => Share is null ? "" : $"{(Share.Value >= 10 ? Math.Round(Share.Value) : Math.Round(Share.Value, 1)):0.#} %";

    /// <summary>The dearest month, or null when nothing is priced.</summary>
    public static Figure? Dearest(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return assessment.Run.Months.MaxBy(m => m.Si) is { Si: > 0 } month ? month : null;
    }

    /// <summary>The least daily light of any bed in the darkest month, or null.</summary>
    public static Figure? DarkestLight(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return assessment.Figures.All
            .Where(f => f.Id!.StartsWith("light.", StringComparison.Ordinal) && f.Id.EndsWith(".darkest", StringComparison.Ordinal))
            .MinBy(f => f.Si);
    }
}
