using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>Rules of the formulary on pages.</summary>
internal static class SumPage
{
    private const int Column = 10;

    public static void List(Terminal terminal)
    {
        var sheet = new Sheet(terminal);
        sheet.Title("Rules for a quick sum");
        foreach (var subject in Formulary.All.GroupBy(f => f.Subject))
        {
            sheet.Heading(subject.Key);
            var table = new Table(2, new(""), new("", Gives: true));
            foreach (var formula in subject)
            {
                table.Row(formula.Id, formula.Name);
            }
            sheet.Add(table);
        }
        sheet.Next($"{CommandLine.Name} sum oxygen-saturation", "what a rule takes, where it comes from, and an example");
        sheet.Print();
    }

    public static void Describe(Terminal terminal, Formula formula, Style style)
    {
        var sheet = new Sheet(terminal);
        sheet.Title($"{formula.Name} ({formula.Id})");
        sheet.Say($"Gives: {formula.Output.Label}{(formula.Output.Unit.Symbol.Length > 0 ? $", {style.UnitOf(formula.Output.Unit).Symbol}" : "")}");
        sheet.Heading("Inputs");
        var table = new Table(2, new("name"), new("what it is", Gives: true), new("holds from", Right: true), new("to", Right: true), new("unit"), new("if left out", Right: true));
        foreach (var input in formula.Inputs)
        {
            table.Row(input.Id, input.Label, Limit(input, input.Min, style), Limit(input, input.Max, style), style.UnitOf(input.Unit).Symbol,
                input.Default is { } value ? style.Write(Amount.Of(value, input.Unit)) : "needed");
        }
        sheet.Add(table);
        foreach (var input in formula.Inputs.Where(i => i.DefaultSource is not null))
        {
            sheet.Say($"{input.Id}, if left out: {input.DefaultSource}", Ink.Quiet, 2, 2);
        }
        Rests(sheet, formula);
        var example = string.Join(' ', formula.Inputs.Select(i => $"{i.Id}={QuickSum.Example(i)}"));
        sheet.Next($"{CommandLine.Name} sum {formula.Id} {example}", "a bare number is in the input's unit; other units work too, such as 68F or 55gal");
        sheet.Print();
    }

    public static void Print(Terminal terminal, QuickSum sum, Style style)
    {
        var sheet = new Sheet(terminal);
        var formula = sum.Formula;
        sheet.Title($"{formula.Output.Label}: {style.Write(sum.Result)}");
        sheet.Heading("From");
        var table = new Table(2, new("", Gives: true), new("value", Right: true), new("holds from", Right: true), new("to", Right: true), new("unit"));
        foreach (var input in sum.Inputs)
        {
            table.Row(input.Input.Label, style.Value(input.Figure) + Written(input, style), Limit(input.Input, input.Input.Min, style),
                Limit(input.Input, input.Input.Max, style), style.UnitOf(input.Input.Unit).Symbol);
        }
        sheet.Add(table);
        foreach (var input in sum.Inputs.Where(i => i.Assumed))
        {
            sheet.Say($"{input.Input.Label} was assumed: {input.Input.DefaultSource ?? "no source"}", Ink.Warning, 2, 2);
        }
        Rests(sheet, formula);
        sheet.Next($"{CommandLine.Name} sum", "all rules");
        sheet.Print();
    }

    // A value typed in another unit than the rule's keeps it, so the reader knows it again.
    private static string Written(SumInput input, Style style)
    {
        var (own, rule) = (style.UnitOf(input.Figure).Symbol, style.UnitOf(input.Input.Unit).Symbol);
        return own == rule || own.Length == 0 ? "" : $" {own}";
    }

    private static string Limit(FormulaInput input, double value, Style style)
    {
        var unit = style.UnitOf(input.Unit);
        return double.IsFinite(value) ? Style.Number(unit.FromSi(input.Unit.ToSi(value)), unit) : "any";
    }

    private static void Rests(Sheet sheet, Formula formula)
    {
        sheet.Gap();
        sheet.Say("equation", formula.Equation, 0, Column);
        foreach (var source in formula.Sources)
        {
            sheet.Say("source", source.Text, 0, Column);
        }
        sheet.Say("error", formula.Error, 0, Column);
        sheet.Say("how sure", $"{(int)formula.Confidence} of 4: {FormulaReport.Sure(formula.Confidence)}", 0, Column);
        if (formula.NotFor is { } not)
        {
            sheet.Say("not for", not, 0, Column);
        }
    }
}
