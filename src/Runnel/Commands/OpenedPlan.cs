using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>A plan that was read and assessed for a command.</summary>
internal sealed record OpenedPlan(string Path, Assessment Assessment, Style Style)
{
    /// <summary>Exit code of an answer that could be given.</summary>
    public const int Computed = 0;

    /// <summary>Exit code of a strict answer with a grave finding.</summary>
    public const int Grave = 3;

    /// <summary>Reads and assesses a plan.</summary>
    /// <exception cref="RefusedException">The plan has errors: all of them are in it.</exception>
    public static OpenedPlan Read(string path, AssessSettings settings, CancellationToken cancel)
    {
        _ = settings.System;
        var draws = settings.CheckedDraws;
        var bench = Workbench.Open(path);
        if (bench.Assess(draws, cancel: cancel) is not { } assessment)
        {
            throw new RefusedException([.. bench.File.Errors.Select(e => e with { File = path })]);
        }
        if (bench.WeatherErrors is { Count: > 0 } errors)
        {
            throw new RefusedException(errors);
        }
        return new(path, assessment, settings.In(bench.Style));
    }

    /// <summary>Opens one number if that was asked for.</summary>
    /// <returns>True if it was, and the answer is given.</returns>
    public bool ShowWorking(AssessSettings settings, Terminal terminal, string command) =>
        ShowWorking(Assessment.Figures, Style, settings, terminal, $"{CommandLine.Name} {command} {Quoted(Path)}");

    /// <summary>Opens one number of a book if that was asked for.</summary>
    public static bool ShowWorking(FigureBook figures, Style style, AssessSettings settings, Terminal terminal, string command)
    {
        if (settings.Working is not { } id)
        {
            return false;
        }
        if (id.Equals("list", StringComparison.OrdinalIgnoreCase))
        {
            if (settings.Json)
            {
                throw new RefusedException("--working", id, "the list of names is for reading", "leave --working list out: the document holds every figure with its id");
            }
            WorkingPage.List(terminal, figures, style, command);
            return true;
        }
        if (figures.Find(id) is not { } figure)
        {
            var near = Names.Nearest(id, figures.All.Select(f => f.Id!));
            throw new RefusedException("--working", id, "no number has that name",
                $"{(near.Count > 0 ? $"perhaps {string.Join(", ", near)}; " : "")}--working list names them all");
        }
        var tree = WorkingTree.Of(figure, style);
        if (settings.Json)
        {
            terminal.Out.WriteLine(ReportJson.Write(tree));
        }
        else
        {
            WorkingPage.Open(terminal, figure, tree, style, command);
        }
        return true;
    }

    /// <summary>The exit code of an answer that was given.</summary>
    public int Code(AssessSettings settings) =>
        settings.Strict && Assessment.Findings.Any(f => f.Severity == Severity.Grave) ? Grave : Computed;

    /// <summary>The plan's path as it is typed again.</summary>
    public string Typed => Quoted(Path);

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
