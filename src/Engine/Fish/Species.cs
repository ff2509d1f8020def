using Runnel.Engine.Quantities;

namespace Runnel.Engine.Fish;

/// <summary>A row of the catalogue: what a kind of fish needs. Values are ranges where sources differ, each with its source.</summary>
public sealed record Species
{
    /// <summary>Common name, the key: "Nile tilapia".</summary>
    public required string Name { get; init; }

    /// <summary>Scientific name.</summary>
    public required string Scientific { get; init; }

    /// <summary>Other names under which it is found.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>True if it is raised to be eaten.</summary>
    public required bool Food { get; init; }

    /// <summary>Water temperature that it survives: low and high, °C.</summary>
    public required Estimate Survives { get; init; }

    /// <summary>Water temperature at which it grows best: low and high, °C.</summary>
    public required Estimate Thrives { get; init; }

    /// <summary>Temperature under which it stops feeding, °C.</summary>
    public Estimate? StopsFeedingBelow { get; init; }

    /// <summary>Least dissolved oxygen for growth, mg/L.</summary>
    public required Estimate Oxygen { get; init; }

    /// <summary>Most total ammonia nitrogen, mg N/L.</summary>
    public required Estimate Ammonia { get; init; }

    /// <summary>Protein in grow-out feed, %.</summary>
    public required Estimate Protein { get; init; }

    /// <summary>Feed each day in grow-out at the best temperature, share of body weight, %/d.</summary>
    public required Estimate Ration { get; init; }

    /// <summary>Feed conversion ratio: kg of feed for each kg gained.</summary>
    public required Estimate FeedConversion { get; init; }

    /// <summary>Thermal growth coefficient at the best temperature, see <see cref="ThermalGrowth"/>.</summary>
    public required Estimate Growth { get; init; }

    /// <summary>Caution about permits, welfare or release that belongs to this species, or null.</summary>
    public string? Caution { get; init; }
}
