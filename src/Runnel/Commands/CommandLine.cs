using Runnel.App.Report;
using Runnel.Files;
using Runnel.Host.Commands.Print;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>The command line: what may be typed, and how trouble is told.</summary>
public static class CommandLine
{
    /// <summary>Exit code of a fault of the program.</summary>
    public const int Fault = 1;

    /// <summary>Exit code of what cannot be read.</summary>
    public const int Refused = 2;

    /// <summary>How the program is called, as it is typed again: the script of a clone says its own path.</summary>
    public static string Name => Environment.GetEnvironmentVariable("RUNNEL_NAME") is { Length: > 0 } name ? name : "runnel";

    /// <summary>Runs one command.</summary>
    /// <param name="args">What was typed.</param>
    /// <param name="terminal">Where answers and errors go.</param>
    /// <param name="page">Starts the page, or null in a program without one.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] args, Terminal terminal, PageStarter? page = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(terminal);
        var app = new CommandApp();
        app.Configure(config => Describe(config, terminal, page));
        int code;
        try
        {
            code = await app.RunAsync(args, cancel);
        }
        catch (RefusedException refused)
        {
            code = Refuse(terminal, refused.Errors, args);
        }
        catch (CommandAppException typed)
        {
            code = Refuse(terminal, [Typed(typed, args)], args);
        }
        catch (OperationCanceledException)
        {
            code = Fault;
        }
#pragma warning disable CA1031 // The last line of defence: a person at a terminal gets one honest line, never a trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            var trace = Environment.GetEnvironmentVariable("RUNNEL_DEBUG") is "1";
            await terminal.Error.WriteLineAsync(trace
                ? fault.ToString()
                : $"runnel: a fault of the program, not of your plan: {fault.Message.ReplaceLineEndings(" ")} (RUNNEL_DEBUG=1 shows where)");
            code = Fault;
        }
        await terminal.Out.FlushAsync(CancellationToken.None);
        await terminal.Error.FlushAsync(CancellationToken.None);
        return code;
    }

    private static void Describe(IConfigurator config, Terminal terminal, PageStarter? page)
    {
        config.Settings.ApplicationName = Name;
        config.Settings.ApplicationVersion = typeof(CommandLine).Assembly.GetName().Version?.ToString(3);
        config.Settings.StrictParsing = true;
        config.Settings.ShowOptionDefaultValues = false;
        config.Settings.MaximumIndirectExamples = 0;
        config.Settings.Console = Spectre(terminal);
        config.Settings.Registrar.RegisterInstance(terminal);
        config.Settings.Registrar.RegisterInstance(new Pages(page));
        config.PropagateExceptions();
        config.SetHelpProvider(new Help(config.Settings));
        config.AddCommand<CheckCommand>("check")
            .WithDescription("Does it fit? What is wrong or unsafe, the gravest first, what to do about it, and what was assumed")
            .WithExample("check", "examples/laundry-room.yaml");
        config.AddCommand<CostCommand>("cost")
            .WithDescription("What does it cost? The build list with its total, and the running bill by part and month")
            .WithExample("cost", "examples/laundry-room.yaml")
            .WithExample("cost", "examples/laundry-room.yaml", "--working", "run.month.lamps");
        config.AddCommand<BalanceCommand>("balance")
            .WithDescription("Do feed, fish, beds, filter and oxygen balance? From a plan, or from any one of them")
            .WithExample("balance", "examples/laundry-room.yaml")
            .WithExample("balance", "--beds", "4m2");
        config.AddCommand<SumCommand>("sum")
            .WithDescription("One published rule on its own, with its source and how sure it is")
            .WithExample("sum", "oxygen-saturation", "temperature=20C", "pressure=101.3kPa");
        config.AddCommand<OpenCommand>("open")
            .WithDescription("The plan as a page in your browser, on this machine only")
            .WithExample("open", "examples/laundry-room.yaml");
    }

    private static IAnsiConsole Spectre(Terminal terminal)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal.Colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = terminal.Colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(terminal.Out),
        });
        console.Profile.Width = terminal.Width;
        console.Profile.Capabilities.Unicode = true;
        return console;
    }

    private static PlanError Typed(CommandAppException typed, string[] args)
    {
        var plan = args.FirstOrDefault(a => a.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || a.EndsWith(".yml", StringComparison.OrdinalIgnoreCase));
        var mend = args.Length > 0 && args[0] == plan ? $"write {CommandLine.Name} check {plan}, {CommandLine.Name} cost {plan} or {CommandLine.Name} balance {plan}" : $"{CommandLine.Name} --help shows what there is";
        return new("", 0, 0, "", "", typed.Message.TrimEnd('.'), mend);
    }

    private static int Refuse(Terminal terminal, IReadOnlyList<PlanError> errors, string[] args)
    {
        if (args.Contains("--json", StringComparer.Ordinal))
        {
            terminal.Out.WriteLine(ReportJson.Write(ReportMaker.Errors(errors)));
        }
        foreach (var error in errors)
        {
            var text = error.ToString();
            // What stands in no file is about what was typed.
            terminal.Error.WriteLine(error.File.Length > 0 ? text : "runnel: " + text[":0:0: ".Length..]);
        }
        return Refused;
    }
}
