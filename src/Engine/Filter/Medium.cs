using Runnel.Engine.Quantities;

namespace Runnel.Engine.Filter;

/// <summary>A row of the catalogue: what a bed or biofilter is filled with.</summary>
public sealed record Medium
{
    /// <summary>Name, the key: "expanded clay".</summary>
    public required string Name { get; init; }

    /// <summary>Other names under which it is found.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>Surface for bacteria in each volume, m²/m³.</summary>
    public required Estimate Surface { get; init; }

    /// <summary>Share of the bulk volume that is water when flooded.</summary>
    public required Estimate Voids { get; init; }

    /// <summary>Bulk density, dry, kg/m³.</summary>
    public required Estimate Density { get; init; }

    /// <summary>What to look for when buying it.</summary>
    public string? Caution { get; init; }
}
