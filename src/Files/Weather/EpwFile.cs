namespace Runnel.Files.Weather;

/// <summary>A weather file in the open EPW format: a place and the hours of one year there.</summary>
/// <remarks>Format: EnergyPlus Auxiliary Programs documentation, weather file data dictionary (eight header lines, then 35 fields an hour),
/// with the departures that files in circulation show: quoted commas, minute 0 or 60, months of different calendar years.</remarks>
public sealed record EpwFile
{
    /// <summary>Longest file that is read, bytes; a year takes about two million.</summary>
    public const int LargestBytes = 16_000_000;

    /// <summary>Name of the file.</summary>
    public required string FileName { get; init; }

    /// <summary>Town or station.</summary>
    public required string City { get; init; }

    /// <summary>State or province, may be empty.</summary>
    public required string Region { get; init; }

    public required string Country { get; init; }

    /// <summary>Which data it was made from, in the file's words: "TMY3".</summary>
    public required string Data { get; init; }

    /// <summary>Number of the weather station, may be empty.</summary>
    public required string Station { get; init; }

    /// <summary>Degrees north.</summary>
    public required double Latitude { get; init; }

    /// <summary>Degrees east.</summary>
    public required double Longitude { get; init; }

    /// <summary>Hours that the place's standard time is ahead of universal time.</summary>
    public required double TimeZone { get; init; }

    /// <summary>Metres above sea level.</summary>
    public required double Elevation { get; init; }

    /// <summary>Ground temperatures by depth; empty if the file has none.</summary>
    public required IReadOnlyList<GroundTemperatures> Ground { get; init; }

    /// <summary>The hours.</summary>
    public required EpwHours Hours { get; init; }

    /// <summary>Missing hours that were filled.</summary>
    public required IReadOnlyList<FilledGaps> Filled { get; init; }

    /// <summary>Quantities that the file leaves out.</summary>
    public required IReadOnlyList<LeftOut> LeftOut { get; init; }

    /// <summary>True if the file has a 29 February. The rows decide, not the header.</summary>
    public bool HasLeapDay => Hours.Count == EpwCalendar.LeapHours;

    /// <summary>Reads a weather file from disk. What is wrong with it is in <see cref="EpwReading.Errors"/>, never an exception.</summary>
    public static EpwReading Read(string path) => WeatherReader.Read(path);

    /// <summary>Reads a weather file from text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Its name, for errors.</param>
    public static EpwReading Parse(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        return new EpwParser(fileName).Read(text);
    }
}
