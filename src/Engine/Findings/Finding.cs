namespace Runnel.Engine.Findings;

/// <summary>Something the grower should know about the plan.</summary>
/// <param name="Code">Stable name, such as <c>fish.too-warm</c>.</param>
/// <param name="Severity">How grave it is.</param>
/// <param name="Where">Which part of the loop, in the grower's names.</param>
/// <param name="Saw">What the plan gives: numbers and units as <see cref="Said"/>, so that hosts may print them in any unit.</param>
/// <param name="Wanted">What would be right.</param>
/// <param name="Do">What to do about it.</param>
/// <param name="Path">Address of the input in the plan, or null.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Finding(
    string Code, Severity Severity, string Where, Said Saw, Said Wanted, Said Do, string? Path = null, string? Source = null);

/// <summary>How grave a finding is, from the least.</summary>
public enum Severity
{
    /// <summary>Good to know: a caution or an assumption.</summary>
    Note,

    /// <summary>Likely to disappoint or to cost.</summary>
    Warning,

    /// <summary>Fish, people or the house may come to harm, or the loop cannot work.</summary>
    Grave,
}
