using System.Collections.Immutable;
using Runnel.Engine.Heat;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Weather;

/// <summary>Months summed up from the hours of a weather file.</summary>
public static class EpwClimate
{
    private const double WattHoursPerMegajoule = 1e6 / 3600;

    /// <summary>The months of the file's place: mean air temperature and mean daily global radiation on the level.</summary>
    /// <remarks>A 29 February in the file counts with its month. One year is not the next: a month may be 2 °C or a quarter of its sun away,
    /// which these single values do not show.</remarks>
    public static Climate ToClimate(this EpwFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var source = SourceOf(file);
        return new()
        {
            Name = file.City.Length > 0 ? file.City : file.FileName,
            Source = source,
            Latitude = file.Latitude,
            Air = Estimates(file.MonthlyMeans(file.Hours.DryBulb), "air", "Mean air temperature", Units.Celsius, source),
            Radiation = Estimates([.. file.MonthlyMeans(file.Hours.Global).Select(w => w * 24 / WattHoursPerMegajoule)],
                "radiation", "Daily sun on the level", Units.MegajoulePerSquareMetreDay, source),
        };
    }

    /// <summary>Mean over the hours of each month from January.</summary>
    public static IReadOnlyList<double> MonthlyMeans(this EpwFile file, ImmutableArray<double> hours)
    {
        ArgumentNullException.ThrowIfNull(file);
        var means = new double[12];
        var at = 0;
        for (var m = 0; m < means.Length; m++)
        {
            var count = EpwCalendar.Days(m + 1, file.HasLeapDay) * 24;
            var sum = 0.0;
            foreach (var value in hours.AsSpan(at, count))
            {
                sum += value;
            }
            means[m] = sum / count;
            at += count;
        }
        return means;
    }

    private static string SourceOf(EpwFile file)
    {
        string[] words = [file.City, file.Region, file.Country, file.Data, file.Station];
        return $"weather file {file.FileName}: {string.Join(", ", words.Where(w => w is not ("" or "-")))}; one year of hours, not a normal";
    }

    private static Estimate[] Estimates(IReadOnlyList<double> values, string key, string label, Unit unit, string source) =>
    [
        .. values.Select((value, m) => Estimate.Of(value, unit,
            new($"place/weather/{key}/{m + 1}", $"{label} in {CalendarDay.MonthNames[m]}, from the weather file", OriginKind.Catalogue, source))),
    ];
}
