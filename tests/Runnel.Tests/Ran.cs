using System.Diagnostics;
using System.Text.Json;
using Runnel.Host.Commands;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Tests;

/// <summary>What one command did.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Ran(int Code, string Out, string Error)
{
    // Examples are named as from the root, so that pages read alike wherever the repository lies.
    static Ran()
    {
        Root = Repository.Root;
        Directory.SetCurrentDirectory(Root);
    }

    /// <summary>Folder of the repository: the first one above the tests that holds the solution.</summary>
    public static string Root { get; }

    public string[] Lines => Out.Split('\n');

    public string[] Errors => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    /// <summary>Runs a command in this process, at the root of the repository.</summary>
    public static async Task<Ran> Here(params string[] args) => await Here(null, args);

    /// <summary>Runs a command in this process with a page starter.</summary>
    public static async Task<Ran> Here(PageStarter? page, string[] args, int width = Terminal.UsualWidth, bool colour = false)
    {
        await using var output = new StringWriter { NewLine = "\n" };
        await using var error = new StringWriter { NewLine = "\n" };
        var code = await CommandLine.RunAsync(args, new Terminal(output, error, width, colour), page, TestContext.Current.CancellationToken);
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>Runs a command as a process, its output redirected.</summary>
    public static async Task<Ran> Process(string[] args, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "runnel.dll"), .. args])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Root,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }
        using var process = System.Diagnostics.Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, await output, await error);
    }
}
