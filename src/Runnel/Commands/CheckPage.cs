using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Findings;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>Findings by gravity, then what was assumed, then a verdict.</summary>
internal static class CheckPage
{
    private const int Column = 8;

    public static void Print(Terminal terminal, OpenedPlan plan)
    {
        var sheet = new Sheet(terminal);
        var findings = plan.Assessment.Findings;
        sheet.Title($"{plan.Assessment.Plan.Name}: does it fit?", plan.Assessment.Plan.Note);
        Group(sheet, plan.Style, findings, Severity.Grave, "!! Grave", "fish, people or the house may come to harm, or it cannot work", Ink.Grave);
        Group(sheet, plan.Style, findings, Severity.Warning, "! Warnings", "likely to disappoint or to cost", Ink.Warning);
        Group(sheet, plan.Style, findings, Severity.Note, "· Notes", "good to know: cautions and open questions", Ink.Plain);
        Assumed(sheet, plan);
        Verdict(sheet, plan);
        sheet.Print();
    }

    /// <summary>The counts in one sentence.</summary>
    public static string Verdict(IReadOnlyList<Finding> findings)
    {
        var grave = findings.Count(f => f.Severity == Severity.Grave);
        var warnings = findings.Count(f => f.Severity == Severity.Warning);
        var notes = findings.Count(f => f.Severity == Severity.Note);
        var rest = $"{Count(warnings, "warning")}, {Count(notes, "note")}.";
        return grave > 0
            ? $"{Count(grave, "grave finding")}: do not build it like this. {rest}"
            : $"Nothing grave. {rest}";
    }

    private static void Group(Sheet sheet, Style style, IReadOnlyList<Finding> all, Severity severity, string title, string meaning, Ink ink)
    {
        var group = all.Where(f => f.Severity == severity).ToList();
        if (group.Count == 0)
        {
            return;
        }
        sheet.Gap();
        sheet.Say($"{title} ({group.Count}): {meaning}", ink);
        foreach (var finding in group)
        {
            sheet.Gap();
            sheet.Say($"{title.Split(' ')[0]} {finding.Where}  [{finding.Code}]", ink == Ink.Plain ? Ink.Strong : ink, 2, 2);
            sheet.Say("saw", style.Print(finding.Saw), 4, Column);
            sheet.Say("wanted", style.Print(finding.Wanted), 4, Column);
            sheet.Say("do", style.Print(finding.Do), 4, Column);
            if (finding.Source is { } source)
            {
                sheet.Say("source", source, 4, Column);
            }
        }
    }

    private static void Assumed(Sheet sheet, OpenedPlan plan)
    {
        var assumed = Assumption.Of(plan.Assessment.Figures);
        if (assumed.Count == 0)
        {
            return;
        }
        sheet.Gap();
        sheet.Say($"Assumed ({assumed.Count}): not in your plan, so these are guesses until you say otherwise", Ink.Strong);
        sheet.Gap();
        AssumedPart.Print(sheet, plan.Style, assumed.Where(a => !a.OnlyUnderGlass));
        if (assumed.Any(a => a.OnlyUnderGlass))
        {
            sheet.Gap();
            sheet.Say("Only for the comparison without lamps, under glass:", Ink.Quiet, 2);
            AssumedPart.Print(sheet, plan.Style, assumed.Where(a => a.OnlyUnderGlass));
        }
    }

    private static void Verdict(Sheet sheet, OpenedPlan plan)
    {
        var findings = plan.Assessment.Findings;
        var ink = findings.Any(f => f.Severity == Severity.Grave) ? Ink.Grave : findings.Any(f => f.Severity == Severity.Warning) ? Ink.Warning : Ink.Good;
        sheet.Gap();
        sheet.Say(Verdict(findings), ink);
        sheet.Next($"{CommandLine.Name} cost {plan.Typed}", "what it costs to build, and what each month costs to run");
    }

    private static string Count(int count, string word) => count == 1 ? $"1 {word}" : $"{count} {word}s";
}
