using System.ComponentModel;
using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Plan;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>What every answer takes.</summary>
internal abstract class AnswerSettings : CommandSettings
{
    [CommandOption("--units <UNITS>")]
    [Description("metric or us; the plan's own when left out")]
    public string? Units { get; init; }

    [CommandOption("--json")]
    [Description("One JSON document for other programs, numbers unrounded")]
    public bool Json { get; init; }

    /// <summary>The units asked for, or null.</summary>
    public UnitSystem? System => Units?.ToLowerInvariant() switch
    {
        null => null,
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.Us,
        _ => throw new RefusedException("--units", Units, "units are metric or us", "write --units metric or --units us"),
    };

    /// <summary>A style in the units asked for.</summary>
    public Style In(Style own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return own with { System = System ?? own.System };
    }
}

/// <summary>What every answer about a plan takes.</summary>
internal abstract class AssessSettings : AnswerSettings
{
    [CommandOption("--draws <N>")]
    [Description("How often the plan's ranges are drawn; 0 for the likely values only [[256]]")]
    public int Draws { get; init; } = Assessor.UsualDraws;

    [CommandOption("--working <ID>")]
    [Description("Opens one number: how it came about, and from which sources. --working list names them all")]
    public string? Working { get; init; }

    [CommandOption("--strict")]
    [Description("Exit code 3 when a finding is grave")]
    public bool Strict { get; init; }

    private const int MostDraws = 100_000;

    /// <summary>Draws, checked.</summary>
    public int CheckedDraws => Draws is >= 0 and <= MostDraws
        ? Draws
        : throw new RefusedException("--draws", $"{Draws}", $"that is not between 0 and {MostDraws}", $"{Assessor.UsualDraws} is enough for most plans");
}

/// <summary>A plan must be named.</summary>
internal sealed class PlanSettings : AssessSettings
{
    [CommandArgument(0, "<PLAN>")]
    [Description("The plan file of your loop")]
    public string Plan { get; init; } = "";
}
