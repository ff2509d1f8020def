using System.ComponentModel;
using Runnel.Host.Commands.Print;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>Starts the page of a plan and stays until it is stopped.</summary>
/// <param name="planPath">The plan.</param>
/// <param name="port">Port on this machine, or null for any free one.</param>
/// <param name="cancel">Stops it.</param>
/// <exception cref="IOException">The port is taken.</exception>
public delegate Task PageStarter(string planPath, int? port, CancellationToken cancel);

/// <summary>Holds the page starter, or none in a program that has no page.</summary>
internal sealed record Pages(PageStarter? Start);

/// <summary>What <c>open</c> takes.</summary>
internal sealed class OpenSettings : CommandSettings
{
    [CommandArgument(0, "<PLAN>")]
    [Description("The plan file of your loop")]
    public string Plan { get; init; } = "";

    [CommandOption("--port <PORT>")]
    [Description("Port on this machine; a free one when left out")]
    public int? Port { get; init; }
}

/// <summary>Opens a plan as a page in the browser.</summary>
internal sealed class OpenCommand(Terminal terminal, Pages pages) : AsyncCommand<OpenSettings>
{
    public override async Task<int> ExecuteAsync(CommandContext context, OpenSettings settings, CancellationToken cancellationToken)
    {
        if (!File.Exists(settings.Plan))
        {
            throw new RefusedException([new(settings.Plan, 1, 1, "", "", "there is no such file", "check its name and folder")]);
        }
        if (settings.Port is < 0 or > 65535)
        {
            throw new RefusedException("--port", $"{settings.Port}", "there is no such port", "write a number from 1024 to 65535");
        }
        if (pages.Start is not { } start)
        {
            throw new RefusedException("open", "", "this program was built without its page", "use check, cost and balance");
        }
        await terminal.Out.FlushAsync(cancellationToken);
        try
        {
            await start(settings.Plan, settings.Port, cancellationToken);
        }
        catch (IOException taken)
        {
            throw new RefusedException("--port", settings.Port?.ToString() ?? "", $"the page cannot be served: {taken.Message.TrimEnd('.')}", "choose another port, or leave it out for a free one");
        }
        return OpenedPlan.Computed;
    }
}
