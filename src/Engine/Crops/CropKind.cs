using Runnel.Engine.Quantities;

namespace Runnel.Engine.Crops;

/// <summary>A row of the catalogue: what a crop needs.</summary>
public sealed record CropKind
{
    /// <summary>Name, the key: "butterhead lettuce".</summary>
    public required string Name { get; init; }

    /// <summary>Other names under which it is found.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>Leafy or fruiting: decides the feed ratio.</summary>
    public required bool Fruiting { get; init; }

    /// <summary>Daily light it needs: least to good, mol/m²/d.</summary>
    public required Estimate DailyLight { get; init; }

    /// <summary>Temperature it does well in, °C.</summary>
    public required Estimate Thrives { get; init; }

    /// <summary>Temperature it survives, °C.</summary>
    public required Estimate Survives { get; init; }

    /// <summary>Plants for each square metre.</summary>
    public required Estimate Spacing { get; init; }

    /// <summary>Days from transplant to harvest (or first picking), d.</summary>
    public required Estimate DaysInBed { get; init; }

    /// <summary>Longest day in light it takes without harm, h/d, or null.</summary>
    public Estimate? LongestDay { get; init; }
}
