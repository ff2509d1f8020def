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

    /// <summary>How it is picked.</summary>
    public required Picking Picking { get; init; }

    /// <summary>Dry share of the fresh harvest.</summary>
    public required Estimate DryMatter { get; init; }

    /// <summary>Nitrogen, share of dry mass.</summary>
    public required Estimate Nitrogen { get; init; }

    /// <summary>Dry mass when it is taken or cut, kg/m²; for fruit, of leaves and stems when it begins to bear.</summary>
    public required Estimate DryMassWhenPicked { get; init; }

    /// <summary>Days after planting at which it is cleared, d.</summary>
    public required Estimate Stays { get; init; }

    /// <summary>Leaf on each kilogram of dry shoot, m²/kg.</summary>
    public required Estimate LeafArea { get; init; }

    /// <summary>Share of new dry mass that goes into fruit once it bears; null for crops without fruit.</summary>
    public Estimate? FruitShare { get; init; }
}

/// <summary>How a crop is picked.</summary>
public enum Picking
{
    /// <summary>Taken whole at its mass, and planted again.</summary>
    Whole,

    /// <summary>Cut back at its mass and left to grow again.</summary>
    Cut,

    /// <summary>Fruit picked each week once it bears.</summary>
    Fruit,
}
