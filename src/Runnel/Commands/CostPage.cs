using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>The build list and the running bill on one page.</summary>
internal static class CostPage
{
    public static void Print(Terminal terminal, OpenedPlan plan)
    {
        var sheet = new Sheet(terminal);
        var (assessment, style) = (plan.Assessment, plan.Style);
        var currency = assessment.Plan.Currency;
        sheet.Title($"{assessment.Plan.Name}: what it costs", assessment.Plan.Note);
        sheet.Say(assessment.Draws > 0
            ? $"All money in {currency}. “8 in 10” is the span that holds eight outcomes in ten, from {assessment.Draws} draws of what the plan leaves open."
            : $"All money in {currency}. Likely values only: nothing was drawn.", Ink.Quiet);
        BuildPart.Print(sheet, assessment, style);
        Alternatives(sheet, assessment, style);
        RunPart.Print(sheet, assessment, style);
        UnderGlass(sheet, assessment, style);
        Work(sheet, assessment, style);
        Closing(sheet, plan);
        sheet.Print();
    }

    private static void Alternatives(Sheet sheet, Assessment assessment, Style style)
    {
        if (assessment.Build.Alternatives.Count == 0)
        {
            return;
        }
        sheet.Heading("Other parts that could do the job");
        foreach (var alike in assessment.Build.Alternatives.GroupBy(a => (a.Use, a.GivesUp)))
        {
            foreach (var other in alike)
            {
                var dearer = other.Saves.Si < 0;
                var money = style.Write(other.Saves).TrimStart('-');
                sheet.Say($"{other.Use} in place of {other.Part}: {(dearer ? "costs" : "saves")} {money}{(dearer ? " more" : "")}", Ink.Plain, 2, 2);
            }
            sheet.Say($"given up: {alike.Key.GivesUp}", Ink.Quiet, 6, 2);
        }
    }

    private static void UnderGlass(Sheet sheet, Assessment assessment, Style style)
    {
        var figures = assessment.Figures;
        if (figures.Find("run.year.total.under-glass") is not { } run || figures.Find("build.total.under-glass") is not { } build)
        {
            return;
        }
        sheet.Heading("Without lamps, under glass");
        var table = new Table(2, new("", Gives: true), new("as planned", Right: true), new("under glass", Right: true), new("difference", Right: true));
        Row("To build", figures["build.total"], build);
        Row("To run for a year", figures["run.year.total"], run);
        var planned = figures.All.Where(f => f.Id!.StartsWith("light.", StringComparison.Ordinal) && f.Id.EndsWith(".darkest", StringComparison.Ordinal)).MinBy(f => f.Si);
        if (planned is not null && figures.Find("light.darkest.under-glass") is { } light)
        {
            Row($"Daily light in the darkest month, {style.UnitOf(light).Symbol}", planned, light);
        }
        sheet.Add(table);
        if (run.How is Procedure { Method: var method })
        {
            sheet.Say($"How: {method}.", Ink.Quiet, 2);
        }

        void Row(string name, Figure a, Figure b) =>
            table.Row(name, style.Value(a), style.Value(b), Style.Number(style.UnitOf(a).FromSi(b.Si) - style.UnitOf(a).FromSi(a.Si), style.UnitOf(a)));
    }

    private static void Work(Sheet sheet, Assessment assessment, Style style)
    {
        var figures = assessment.Figures;
        if (figures.Find("work.year") is null && figures.Find("build.own-work") is null)
        {
            return;
        }
        sheet.Heading("Own work");
        var table = new Table(2, new("", Gives: true), new("without", Right: true), new("own work", Right: true), new("with", Right: true));
        Row("To build", "build.total", "build.own-work", "build.total.with-work");
        Row("To run for a year", "run.year.total", "run.year.own-work", "run.year.total.with-work");
        if (!table.IsEmpty)
        {
            sheet.Add(table);
        }
        if (figures.Find("work.year") is { } hours)
        {
            sheet.Say($"{style.Write(hours)} of work a year.", Ink.Quiet, 2);
        }

        void Row(string name, string without, string work, string with)
        {
            if (figures.Find(with) is { } total)
            {
                table.Row(name, style.Value(figures[without]), style.Value(figures[work]), style.Value(total));
            }
        }
    }

    private static void Closing(Sheet sheet, OpenedPlan plan)
    {
        sheet.Gap();
        if (plan.Assessment.Findings.Count(f => f.Severity == Severity.Grave) is > 0 and var grave)
        {
            sheet.Say($"!! {(grave == 1 ? "One finding is" : $"{grave} findings are$")} grave: {CommandLine.Name} check {plan.Typed}", Ink.Grave);
        }
        sheet.Say("Every number opens: add --working ID, such as --working run.month.total; --working list names them all.", Ink.Quiet);
        sheet.Next($"{CommandLine.Name} balance {plan.Typed}", "feed, fish, beds and filter against each other");
    }
}
