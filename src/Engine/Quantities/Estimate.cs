namespace Runnel.Engine.Quantities;

/// <summary>
/// A number that somebody gave, with how far it may be off: "23 W", "30 to 50 USD, likely 35", and where it came from.
/// </summary>
/// <param name="Low">Least value, SI.</param>
/// <param name="Likely">Most likely value, SI.</param>
/// <param name="High">Greatest value, SI.</param>
/// <param name="Unit">The unit it was written in.</param>
/// <param name="From">Which input it is.</param>
public sealed record Estimate(double Low, double Likely, double High, Unit Unit, Origin From)
{
    /// <summary>True if the writer gave a range.</summary>
    public bool IsRange => High > Low;

    /// <summary>A single number.</summary>
    public static Estimate Of(double value, Unit unit, Origin from)
    {
        var si = unit.ToSi(value);
        return new(si, si, si, unit, from);
    }

    /// <summary>A range with a most likely value; without one, the middle.</summary>
    public static Estimate Of(double low, double high, Unit unit, Origin from, double? likely = null)
    {
        var (a, b) = (unit.ToSi(Math.Min(low, high)), unit.ToSi(Math.Max(low, high)));
        return new(a, likely is { } l ? unit.ToSi(l) : (a + b) / 2, b, unit, from);
    }
}

/// <summary>Where a given number comes from: a place in the plan, a default with its source, or a row of the catalogue.</summary>
/// <param name="Path">Address in the plan, such as <c>lamps/over the beds/hours</c>; for catalogue rows <c>catalogue:species/…</c>.</param>
/// <param name="Label">What it is called on screen: "Hours lit each day, lamps over the beds".</param>
/// <param name="Kind">Written in the plan, a default, or from the catalogue.</param>
/// <param name="Source">For defaults and catalogue rows: the published source, or "common practice, no source".</param>
public sealed record Origin(string Path, string Label, OriginKind Kind = OriginKind.Plan, string? Source = null);

/// <summary>Who said a number.</summary>
public enum OriginKind
{
    /// <summary>The grower wrote it.</summary>
    Plan,

    /// <summary>The grower left it out and Runnel took its default: a guess, marked so on every screen.</summary>
    Default,

    /// <summary>A row of the catalogue, with its source.</summary>
    Catalogue,

    /// <summary>A definition or a constant of nature.</summary>
    Constant,
}
