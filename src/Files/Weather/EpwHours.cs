using System.Collections.Immutable;

namespace Runnel.Files.Weather;

/// <summary>
/// The hours of a year from a weather file, one array for each quantity, all of <see cref="Count"/> values. Place 0 is the hour that ends at
/// 01:00 on 1 January, in the standard time of the place; the last is the hour that ends at midnight on 31 December.
/// </summary>
public sealed record EpwHours
{
    /// <summary>8760, or 8784 in a file that has a 29 February.</summary>
    public int Count => DryBulb.Length;

    /// <summary>Air temperature at the end of the hour, °C.</summary>
    public required ImmutableArray<double> DryBulb { get; init; }

    /// <summary>Dew point, °C; worked out from humidity where the file does not give it.</summary>
    public required ImmutableArray<double> DewPoint { get; init; }

    /// <summary>Relative humidity, %, at most 100; worked out from the dew point where the file does not give it.</summary>
    public required ImmutableArray<double> Humidity { get; init; }

    /// <summary>Air pressure, Pa; that of the elevation where the file does not give it.</summary>
    public required ImmutableArray<double> Pressure { get; init; }

    /// <summary>Global radiation on the level over the hour, Wh/m².</summary>
    public required ImmutableArray<double> Global { get; init; }

    /// <summary>Direct radiation square to the sun over the hour, Wh/m²; null if the file does not give it.</summary>
    public ImmutableArray<double>? Direct { get; init; }

    /// <summary>Diffuse radiation on the level over the hour, Wh/m²; null if the file does not give it.</summary>
    public ImmutableArray<double>? Diffuse { get; init; }

    /// <summary>Infrared radiation from the sky on the level over the hour, Wh/m²; null if the file does not give it.</summary>
    public ImmutableArray<double>? Infrared { get; init; }

    /// <summary>Wind speed, m/s, at the height of the station's instrument, mostly 10 m.</summary>
    public required ImmutableArray<double> Wind { get; init; }

    /// <summary>Rain over the hour, mm; null if the file does not give it.</summary>
    public ImmutableArray<double>? Rain { get; init; }
}

/// <summary>Hours that a file marks as missing and that were filled between their neighbours by straight line.</summary>
/// <param name="Quantity">Which: "dry bulb".</param>
/// <param name="Hours">How many hours.</param>
/// <param name="Longest">Longest run of them, hours.</param>
public sealed record FilledGaps(string Quantity, int Hours, int Longest);

/// <summary>A quantity that the file leaves out or mostly marks as missing, and what stands in for it.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Instead">What stands in: "from the elevation".</param>
public sealed record LeftOut(string Quantity, string Instead);

/// <summary>Ground temperatures that a weather file's header gives.</summary>
/// <param name="Depth">Depth, m.</param>
/// <param name="Months">Temperature of each month from January, °C.</param>
/// <remarks>Such values are computed for ground under the open sky: they are too extreme under a heated building.</remarks>
public sealed record GroundTemperatures(double Depth, IReadOnlyList<double> Months);
