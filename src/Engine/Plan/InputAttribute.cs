namespace Runnel.Engine.Plan;

/// <summary>
/// Describes one input of the plan, once. Reading, checking, the schema for editors, docs/plan-format.md and the labels of the page
/// all come from here.
/// </summary>
/// <param name="key">How it is written in the plan file: lower case, words with spaces.</param>
/// <param name="label">What it is called on screen.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class InputAttribute(string key, string label) : Attribute
{
    public string Key { get; } = key;

    public string Label { get; } = label;

    /// <summary>One line of help for a grower.</summary>
    public string Help { get; init; } = "";

    /// <summary>Symbol of the unit that numbers are in when none is written, and whose dimension is asked for: "W", "L/h", "money/kWh".</summary>
    public string? Unit { get; init; }

    /// <summary>Least sensible value, in <see cref="Unit"/>.</summary>
    public double Min { get; init; } = double.NegativeInfinity;

    /// <summary>Greatest sensible value, in <see cref="Unit"/>.</summary>
    public double Max { get; init; } = double.PositiveInfinity;

    /// <summary>What is taken when it is left out, as it would be written; null when nothing is assumed.</summary>
    public string? Default { get; init; }

    /// <summary>Where the default comes from: a source, or "common practice, no source".</summary>
    public string? DefaultSource { get; init; }

    /// <summary>True if the plan cannot be read without it.</summary>
    public bool Required { get; init; }

    /// <summary>An example of how it is written.</summary>
    public string? Example { get; init; }
}

/// <summary>Describes a part of the plan that holds inputs.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class PlanPartAttribute(string title) : Attribute
{
    public string Title { get; } = title;

    /// <summary>A sentence or two for the documentation.</summary>
    public string Help { get; init; } = "";
}
