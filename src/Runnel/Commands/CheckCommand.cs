using Runnel.App.Report;
using Runnel.Host.Commands.Print;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>Does the plan fit, and what was assumed.</summary>
internal sealed class CheckCommand(Terminal terminal) : Command<PlanSettings>
{
    public override int Execute(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        var plan = OpenedPlan.Read(settings.Plan, settings, cancellationToken);
        if (!plan.ShowWorking(settings, terminal, "check"))
        {
            if (settings.Json)
            {
                terminal.Out.WriteLine(ReportJson.Write(new ReportMaker(plan.Style).Check(plan.Assessment, plan.Path)));
            }
            else
            {
                CheckPage.Print(terminal, plan);
            }
        }
        return plan.Code(settings);
    }
}
