using Runnel.App.Report;
using Runnel.Host.Commands.Print;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>What it costs to build and to run.</summary>
internal sealed class CostCommand(Terminal terminal) : Command<PlanSettings>
{
    public override int Execute(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        var plan = OpenedPlan.Read(settings.Plan, settings, cancellationToken);
        if (!plan.ShowWorking(settings, terminal, "cost"))
        {
            if (settings.Json)
            {
                terminal.Out.WriteLine(ReportJson.Write(new ReportMaker(plan.Style).Cost(plan.Assessment, plan.Path)));
            }
            else
            {
                CostPage.Print(terminal, plan);
            }
        }
        return plan.Code(settings);
    }
}
