using Spectre.Console;
using Spectre.Console.Cli;
using Spectre.Console.Cli.Help;
using Spectre.Console.Rendering;

namespace Runnel.Host.Commands;

/// <summary>Help that says what a command answers, shows an example and names what comes next.</summary>
internal sealed class Help(ICommandAppSettings settings) : HelpProvider(settings)
{
    private static readonly Dictionary<string, string> Next = new(StringComparer.Ordinal)
    {
        [""] = "Start with a look at an example:\n\n    runnel cost examples/laundry-room.yaml\n\nthen copy it, change it to your loop, and ask:\n\n    runnel check my-loop.yaml\n",
        ["check"] = "runnel cost PLAN, what it costs; runnel check PLAN --working ID, how one number came about.",
        ["cost"] = "runnel cost PLAN --working run.month.total opens that sum; runnel balance PLAN, whether fish, beds and filter fit.",
        ["balance"] = "runnel balance PLAN --from beds, what these beds ask for; runnel check PLAN, everything else that may not fit.",
        ["sum"] = "runnel sum FORMULA shows what it takes; runnel sum FORMULA name=value … computes it.",
        ["open"] = "Change a value on the page; every number follows. Save writes that value into your file and leaves the rest as it is.",
    };

    public override IEnumerable<IRenderable> GetDescription(ICommandModel model, ICommandInfo? command)
    {
        if (command is not null)
        {
            return base.GetDescription(model, command);
        }
        return
        [
            new Text("Runnel answers three questions about one loop of water in which fish feed\nvegetables: what it costs to build, what each month costs to run, and whether\nits parts fit. Every number can be opened down to its sources.\n\n"),
        ];
    }

    public override IEnumerable<IRenderable> GetFooter(ICommandModel model, ICommandInfo? command) =>
    [
        new Text(
            (command is null ? "\n" : "\nNEXT:\n    ") + Next.GetValueOrDefault(command?.Name ?? "", "") + "\n"
            + (command is null ? "\nExit codes: 0 computed; 1 a fault of the program; 2 something cannot be read;\n3 a grave finding, with --strict.\n" : "")),
    ];
}
