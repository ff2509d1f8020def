using Runnel.Engine.Quantities;

namespace Runnel.Engine.Heat;

/// <summary>A row of the catalogue, or a weather file summed up: the months of a place.</summary>
public sealed record Climate
{
    /// <summary>Name, the key: "maritime 52 N".</summary>
    public required string Name { get; init; }

    /// <summary>Other names under which it is found.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>Where the values come from.</summary>
    public required string Source { get; init; }

    /// <summary>Degrees north.</summary>
    public required double Latitude { get; init; }

    /// <summary>Mean air temperature of each month from January, °C.</summary>
    public required IReadOnlyList<Estimate> Air { get; init; }

    /// <summary>Mean daily global radiation on the level of each month from January, MJ/m²/d.</summary>
    public required IReadOnlyList<Estimate> Radiation { get; init; }
}
