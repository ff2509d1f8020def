using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Figures;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>One number opened, down to what was given.</summary>
internal static class WorkingPage
{
    private const int Step = 2;
    private const int Deepest = 24;

    public static void Open(Terminal terminal, Figure figure, WorkingTree tree, Style style, string command)
    {
        var sheet = new Sheet(terminal);
        var range = style.Range(figure);
        sheet.Title($"{figure.Label}: {style.Write(figure)}{(range.Length > 0 ? $" ({range} in 8 outcomes of 10)" : "")}");
        sheet.Gap();
        Write(sheet, tree, 0);
        sheet.Gap();
        sheet.Say("Numbers are shown rounded and computed unrounded.", Ink.Quiet);
        sheet.Say($"Any number with a name in [ ] opens alone: {command} --working ID", Ink.Quiet);
        sheet.Print();
    }

    public static void List(Terminal terminal, FigureBook figures, Style style, string command)
    {
        var sheet = new Sheet(terminal);
        sheet.Title("Numbers that can be opened");
        sheet.Say($"{command} --working ID", Ink.Quiet);
        sheet.Gap();
        var table = new Table(0, new("id", Gives: true), new("name", Gives: true), new("value", Right: true));
        foreach (var figure in figures.All)
        {
            table.Row(figure.Id!, figure.Label ?? "", style.Write(figure));
        }
        sheet.Add(table);
        sheet.Print();
    }

    private static void Write(Sheet sheet, WorkingTree node, int depth)
    {
        var indent = Math.Min(depth, Deepest) * Step;
        var name = node.Name.Length == 0 ? "" : node.Name + (node.Id is null ? " " : $" [{node.Id}] ");
        var closed = node.Closed == WorkingTree.Above ? " (opened above)" : "";
        sheet.Say($"{name}= {node.Sentence}{closed}", depth == 0 ? Ink.Strong : Ink.Plain, indent, Step + Step);
        if (node.Equation is { } equation)
        {
            sheet.Say($"rule: {equation}", Ink.Quiet, indent + Step, Step);
            sheet.Say($"how sure: {node.Sure}", Ink.Quiet, indent + Step, Step);
        }
        foreach (var source in node.Closed is null ? node.Sources : [])
        {
            sheet.Say($"source: {source}", Ink.Quiet, indent + Step, Step);
        }
        foreach (var step in node.Steps)
        {
            Write(sheet, step, depth + 1);
        }
    }
}
