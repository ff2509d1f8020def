using System.ComponentModel;
using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Assess;
using Runnel.Host.Commands.Print;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>What <c>sum</c> takes.</summary>
internal sealed class SumSettings : AnswerSettings
{
    [CommandArgument(0, "[FORMULA]")]
    [Description("Name of a rule; leave it out to see all of them")]
    public string? Formula { get; init; }

    [CommandArgument(1, "[VALUES]")]
    [Description("name=value for each input, such as temperature=20C; a bare number is in the input's unit")]
    public string[] Values { get; init; } = [];

    [CommandOption("--list")]
    [Description("All rules by subject")]
    public bool List { get; init; }
}

/// <summary>One rule of the formulary on its own.</summary>
internal sealed class SumCommand(Terminal terminal) : Command<SumSettings>
{
    public override int Execute(CommandContext context, SumSettings settings, CancellationToken cancellationToken)
    {
        var style = settings.In(new Style());
        if (settings.List || settings.Formula is null)
        {
            if (settings.Json)
            {
                terminal.Out.WriteLine(ReportJson.Write(new FormularyReport([.. Formulary.All.Select(FormulaReport.Of)])));
            }
            else
            {
                SumPage.List(terminal);
            }
            return OpenedPlan.Computed;
        }
        if (Formulary.Find(settings.Formula) is not { } formula)
        {
            var near = QuickSum.Nearest(settings.Formula);
            throw new RefusedException("FORMULA", settings.Formula, "no rule has that name",
                $"{(near.Count > 0 ? $"perhaps {string.Join(", ", near)}; " : "$")}{CommandLine.Name} sum lists them all");
        }
        if (settings.Values.Length == 0)
        {
            if (settings.Json)
            {
                terminal.Out.WriteLine(ReportJson.Write(FormulaReport.Of(formula)));
            }
            else
            {
                SumPage.Describe(terminal, formula, style);
            }
            return OpenedPlan.Computed;
        }
        var sum = QuickSum.Read(formula, settings.Values, style);
        if (settings.Json)
        {
            var maker = new ReportMaker(style);
            terminal.Out.WriteLine(ReportJson.Write(new SumReport(
                FormulaReport.Of(formula),
                [.. sum.Inputs.Select(i => new SumInputReport(
                    i.Input.Id, i.Input.Label, style.UnitOf(i.Figure).FromSi(i.Figure.Si), style.UnitOf(i.Figure).Symbol, i.Assumed,
                    i.Assumed ? i.Input.DefaultSource : null))],
                [maker.Figure(sum.Result)])));
        }
        else
        {
            SumPage.Print(terminal, sum, style);
        }
        return OpenedPlan.Computed;
    }
}
