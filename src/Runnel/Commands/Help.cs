using Spectre.Console;
using Spectre.Console.Cli;
using Spectre.Console.Cli.Help;
using Spectre.Console.Rendering;

namespace Runnel.Host.Commands;

/// <summary>Help that says what a command answers, shows an example and names what comes next.</summary>
internal sealed class Help(ICommandAppSettings settings) : HelpProvider(settings)
{
    private static readonly Dictionary<string, (string Command, string Why)[]> Next = new(StringComparer.Ordinal)
    {
        [""] =
        [
            ($"{CommandLine.Name} cost examples/laundry-room.yaml", "what an answer looks like"),
            ($"{CommandLine.Name} check my-loop.yaml", "a copy of an example, changed to your loop"),
        ],
        ["check"] = [($"{CommandLine.Name} cost PLAN", "what it costs"), ($"{CommandLine.Name} check PLAN --working ID", "how one number came about")],
        ["cost"] = [($"{CommandLine.Name} cost PLAN --working run.month.total", "opens that sum"), ($"{CommandLine.Name} balance PLAN", "whether fish, beds and filter fit")],
        ["balance"] = [($"{CommandLine.Name} balance PLAN --from beds", "what these beds ask for"), ($"{CommandLine.Name} check PLAN", "everything else that may not fit")],
        ["sum"] = [($"{CommandLine.Name} sum FORMULA", "what a rule takes and where it comes from"), ($"{CommandLine.Name} sum FORMULA name=value ...", "computes it")],
        ["open"] = [("change a value on the page", "every number follows"), ("save", "writes that value into your file, the rest stays as it is")],
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

    public override IEnumerable<IRenderable> GetFooter(ICommandModel model, ICommandInfo? command)
    {
        var lines = new List<string> { "", command is null ? "START WITH:" : "NEXT:" };
        foreach (var (typed, why) in Next.GetValueOrDefault(command?.Name ?? "", []))
        {
            lines.Add("    " + typed);
            lines.Add("        " + why);
        }
        if (command is null)
        {
            lines.Add("");
            lines.Add($"{CommandLine.Name} COMMAND --help teaches one command. Exit codes: 0 computed; 1 a fault of");
            lines.Add("the program; 2 something cannot be read; 3 a grave finding, with --strict.");
        }
        return [new Text(string.Join('\n', lines) + "\n")];
    }
}
