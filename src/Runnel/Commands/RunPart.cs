using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>The running bill of a cost page.</summary>
internal static class RunPart
{
    public static void Print(Sheet sheet, Assessment assessment, Style style)
    {
        sheet.Heading("To run");
        Parts(sheet, assessment, style);
        Months(sheet, assessment, style);
        Electricity(sheet, assessment, style);
    }

    private static void Parts(Sheet sheet, Assessment assessment, Style style)
    {
        var figures = assessment.Figures;
        var (month, year) = (figures["run.month.total"], figures["run.year.total"]);
        var complete = assessment.Run.Unpriced.Count == 0;
        var table = new Table(2,
            new("part", Gives: true), new("mean month", Right: true), new("year", Right: true), new("share", Right: true), new("year, 8 in 10", Right: true));
        foreach (var line in assessment.Run.Lines)
        {
            if (line is { Year: { } cost, Month: { } mean })
            {
                table.Row(line.Label, style.Value(mean), style.Value(cost), Share(cost.Si, year.Si), style.Range(cost));
            }
            else
            {
                table.Row(Ink.Warning, line.Label, "no price", "no price", "", "");
            }
        }
        table.Rule();
        table.Row(Ink.Strong, complete ? "Total" : "Total, incomplete", style.Value(month), style.Value(year), "", style.Range(year));
        sheet.Add(table);
        if (!complete)
        {
            sheet.Say(
                $"! The total is incomplete: no price for {string.Join(", ", assessment.Run.Unpriced)}. Add a tariff:, a price for water or the missing prices:.",
                Ink.Warning, 2, 2);
        }
    }

    private static void Months(Sheet sheet, Assessment assessment, Style style)
    {
        var run = assessment.Run;
        var most = run.Months.Max(m => m.Si);
        var hasEnergy = run.MonthEnergy.Count == 12;
        sheet.Heading("Month by month");
        List<Column> columns = [new("month"), new("cost", Right: true), new("8 in 10", Right: true)];
        if (hasEnergy)
        {
            columns.Add(new("kWh", Right: true));
        }
        columns.Add(new(""));
        var table = new Table(2, [.. columns]);
        for (var m = 0; m < 12; m++)
        {
            List<string> cells = [CalendarDay.MonthNames[m], style.Value(run.Months[m]), style.Range(run.Months[m])];
            if (hasEnergy)
            {
                cells.Add(style.Value(run.MonthEnergy[m]));
            }
            cells.Add(Bar(run.Months[m].Si, most));
            table.Row([.. cells]);
        }
        sheet.Add(table);
    }

    private static void Electricity(Sheet sheet, Assessment assessment, Style style)
    {
        var figures = assessment.Figures;
        if (figures.Find("energy.year.total") is not { } total || total.Si <= 0)
        {
            return;
        }
        sheet.Heading("Electricity");
        var table = new Table(2,
            new("part", Gives: true), new("kWh a day", Right: true), new("kWh a year", Right: true), new("share", Right: true), new("8 in 10", Right: true),
            new("cost a year", Right: true));
        foreach (var line in assessment.Run.Lines)
        {
            if (figures.Find($"energy.year.{line.Id}") is { } year)
            {
                table.Row(
                    line.Label, Style.Number(year.Value / 365, Units.One), style.Value(year), Share(year.Si, total.Si), style.Range(year),
                    line.Year is { } cost ? style.Value(cost) : "no price");
            }
        }
        table.Rule();
        table.Row(Ink.Strong, "Total", Style.Number(total.Value / 365, Units.One), style.Value(total), "", style.Range(total),
            Cost(assessment) is { } all ? Style.Number(all, Unit.Money(assessment.Plan.Currency)) : "no price");
        sheet.Add(table);
    }

    private static double? Cost(Assessment assessment)
    {
        var electric = assessment.Run.Lines.Where(l => assessment.Figures.Find($"energy.year.{l.Id}") is not null).ToList();
        return electric.All(l => l.Year is not null) ? electric.Sum(l => l.Year!.Si) : null;
    }

    private static string Share(double part, double whole) => whole > 0 ? $"{100 * part / whole:0} %" : "";

    private static string Bar(double value, double most) => most > 0 && value > 0 ? new string('█', Math.Max(1, (int)Math.Round(20 * value / most))) : "";
}
