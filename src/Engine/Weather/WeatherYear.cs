using System.Collections.Immutable;

namespace Runnel.Engine.Weather;

/// <summary>
/// The weather of the 8760 hours of a year of 365 days. Place 0 is the hour from 00:00 to 01:00 on 1 January; the last ends on 31 December.
/// </summary>
public sealed record WeatherYear
{
    /// <summary>Hours of the year: 29 February is left out.</summary>
    public const int Hours = 8760;

    /// <summary>Where it comes from: a weather file, or the months of a climate and the seed.</summary>
    public required string Source { get; init; }

    /// <summary>Degrees north.</summary>
    public required double Latitude { get; init; }

    /// <summary>True if hours count from the sun's own noon at 12:00 (a climate has no clock); false for the standard time of the place.</summary>
    public required bool SolarTime { get; init; }

    /// <summary>True if the hours were made up from monthly means; false if they were given hour by hour.</summary>
    public required bool MadeUp { get; init; }

    /// <summary>Air temperature, °C.</summary>
    public required ImmutableArray<double> Air { get; init; }

    /// <summary>Relative humidity, share from 0 to 1, over water.</summary>
    public required ImmutableArray<double> Humidity { get; init; }

    /// <summary>Global radiation on the level, mean over the hour, W/m².</summary>
    public required ImmutableArray<double> Global { get; init; }

    /// <summary>Direct radiation square to the sun, mean over the hour, W/m².</summary>
    public required ImmutableArray<double> Direct { get; init; }

    /// <summary>Diffuse radiation on the level, mean over the hour, W/m².</summary>
    public required ImmutableArray<double> Diffuse { get; init; }

    /// <summary>Wind speed, m/s.</summary>
    public required ImmutableArray<double> Wind { get; init; }

    /// <summary>Months, from 1, whose radiation was given greater than reaches the latitude and was cut to what can be.</summary>
    public IReadOnlyList<int> CutMonths { get; init; } = [];
}
