using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Runnel.Engine.Sun;
using Runnel.Engine.Weather;

namespace Runnel.Files.Weather;

/// <summary>The hours of a weather file as the year that the engine runs through.</summary>
public static class EpwWeatherYear
{
    private const int Samples = 6;

    /// <summary>The file's year of 8760 hours, in the standard time of the place.</summary>
    /// <remarks>A 29 February is left out. Air, humidity and wind are those that the file gives for the end of each hour. Where direct or diffuse
    /// radiation is left out, both come from the split of the global radiation by its clearness (Erbs, Klein and Duffie 1982), with the sun of the
    /// year 2001, which differs from any other year's by a quarter of a day.</remarks>
    public static WeatherYear ToWeatherYear(this EpwFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var hours = file.Hours;
        var global = Year(file, hours.Global);
        ImmutableArray<double> direct, diffuse;
        if (hours.Direct is { } beam && hours.Diffuse is { } sky)
        {
            (direct, diffuse) = (Year(file, beam), Year(file, sky));
        }
        else
        {
            (direct, diffuse) = Split(file, global);
        }
        return new()
        {
            Source = $"weather file {file.FileName}",
            Latitude = file.Latitude,
            SolarTime = false,
            MadeUp = false,
            Air = Year(file, hours.DryBulb),
            Humidity = [.. Year(file, hours.Humidity).Select(h => h / 100)],
            Global = global,
            Direct = direct,
            Diffuse = diffuse,
            Wind = Year(file, hours.Wind),
        };
    }

    private static ImmutableArray<double> Year(EpwFile file, ImmutableArray<double> hours) =>
        file.HasLeapDay ? hours.RemoveRange(EpwCalendar.LeapDayStart, 24) : hours;

    private static (ImmutableArray<double> Direct, ImmutableArray<double> Diffuse) Split(EpwFile file, ImmutableArray<double> global)
    {
        var direct = new double[global.Length];
        var diffuse = new double[global.Length];
        var newYear = JulianDay.Of(2001, 1, 1, -file.TimeZone);
        for (var h = 0; h < global.Length; h++)
        {
            if (global[h] <= 0)
            {
                continue;
            }
            var (sine, distance) = (0.0, 1.0);
            for (var k = 0; k < Samples; k++)
            {
                var sun = SolarPosition.Meeus(newYear + (h + (k + 0.5) / Samples) / 24, file.Latitude, file.Longitude);
                sine += Math.Max(0, Math.Sin(sun.TrueElevation * Math.PI / 180)) / Samples;
                distance = sun.Distance;
            }
            (direct[h], diffuse[h]) = SkySplit.Hour(global[h], Math.Min(1, sine), 1 / (distance * distance));
        }
        return (ImmutableCollectionsMarshal.AsImmutableArray(direct), ImmutableCollectionsMarshal.AsImmutableArray(diffuse));
    }
}
