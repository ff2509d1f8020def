using System.Collections.Immutable;
using Runnel.Engine.Water;
using Runnel.Engine.Weather;

namespace Runnel.Files.Weather;

/// <summary>Fills what a file marks as missing, or says that too much of it is.</summary>
/// <remarks>The bounds are ours, no source: a day's course cannot be guessed across more than a quarter of it.</remarks>
internal sealed class EpwFilling(EpwErrors errors, int firstLine)
{
    /// <summary>Longest run that is filled, hours.</summary>
    public const int LongestRun = 6;

    /// <summary>Most hours that are filled in one quantity: 2 % of a year.</summary>
    public const int MostHours = 175;

    private readonly List<FilledGaps> _filled = [];
    private readonly List<LeftOut> _leftOut = [];

    public EpwFile? Build(string fileName, EpwHeader header, EpwRows rows, bool leap)
    {
        var dryBulb = Needed(rows, EpwColumn.DryBulb, leap);
        var global = Needed(rows, EpwColumn.Global, leap);
        var wind = Needed(rows, EpwColumn.Wind, leap);
        var humidity = Optional(rows, EpwColumn.Humidity);
        var dewPoint = Optional(rows, EpwColumn.DewPoint);
        if (humidity is null && dewPoint is null)
        {
            humidity = Needed(rows, EpwColumn.Humidity, leap);
        }
        if (errors.Any)
        {
            return null;
        }
        var pressure = Optional(rows, EpwColumn.Pressure);
        if (pressure is null)
        {
            _leftOut.Add(new(EpwColumn.Pressure.Name, "the standard atmosphere at the elevation of the place"));
            pressure = new double[dryBulb.Length];
            Array.Fill(pressure, 1000 * PressureAtElevation.StandardAtmosphere(header.Elevation));
        }
        Moisture(dryBulb, ref humidity, ref dewPoint);
        return new()
        {
            FileName = fileName,
            City = header.City,
            Region = header.Region,
            Country = header.Country,
            Data = header.Data,
            Station = header.Station,
            Latitude = header.Latitude,
            Longitude = header.Longitude,
            TimeZone = header.TimeZone,
            Elevation = header.Elevation,
            Ground = header.Ground,
            Hours = new()
            {
                DryBulb = Freeze(dryBulb),
                DewPoint = Freeze(dewPoint!),
                Humidity = Freeze(humidity!),
                Pressure = Freeze(pressure),
                Global = Freeze(global),
                Direct = Kept(rows, EpwColumn.Direct, "the split of the global radiation by its clearness"),
                Diffuse = Kept(rows, EpwColumn.Diffuse, "the split of the global radiation by its clearness"),
                Infrared = Kept(rows, EpwColumn.Infrared, "nothing"),
                Wind = Freeze(wind),
                Rain = Kept(rows, EpwColumn.Rain, "nothing"),
            },
            Filled = _filled,
            LeftOut = _leftOut,
        };
    }

    private static ImmutableArray<double> Freeze(double[] values) =>
        System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(values);

    private void Moisture(double[] dryBulb, ref double[]? humidity, ref double[]? dewPoint)
    {
        if (humidity is null)
        {
            _leftOut.Add(new(EpwColumn.Humidity.Name, "from dew point and dry bulb"));
            var dew = dewPoint!;
            humidity = [.. dryBulb.Select((air, i) => DewPoint.Humidity(air, Math.Min(air, dew[i])))];
        }
        for (var i = 0; i < humidity.Length; i++)
        {
            humidity[i] = Math.Min(humidity[i], 100);
        }
        if (dewPoint is null)
        {
            _leftOut.Add(new(EpwColumn.DewPoint.Name, "from relative humidity and dry bulb"));
            var share = humidity;
            dewPoint = [.. dryBulb.Select((air, i) => DewPoint.OfHumidity(air, Math.Max(share[i], DewPoint.MinHumidity)))];
        }
    }

    private ImmutableArray<double>? Kept(EpwRows rows, EpwColumn column, string instead)
    {
        if (Optional(rows, column) is { } values)
        {
            return Freeze(values);
        }
        _leftOut.Add(new(column.Name, instead));
        return null;
    }

    private double[]? Optional(EpwRows rows, EpwColumn column)
    {
        var values = rows[column];
        var (missing, longest, _) = Count(values);
        if (missing > MostHours || longest > LongestRun)
        {
            return null;
        }
        Fill(values, column, missing, longest);
        return values;
    }

    private double[] Needed(EpwRows rows, EpwColumn column, bool leap)
    {
        var values = rows[column];
        var (missing, longest, at) = Count(values);
        if (missing > MostHours)
        {
            errors.Add("missing", firstLine, 1, column.Name, "", $"{missing:N0} of {values.Length:N0} hours are marked as missing",
                $"up to {MostHours} hours can be filled, in runs of up to {LongestRun}; take a file that has this quantity");
        }
        else if (longest > LongestRun)
        {
            errors.Add("missing", firstLine + at, 1, column.Name, "", $"{longest} hours in a row are marked as missing, from {EpwCalendar.Say(at, leap)}",
                $"runs of up to {LongestRun} hours can be filled; take a file that has these hours");
        }
        else
        {
            Fill(values, column, missing, longest);
        }
        return values;
    }

    // A run across the turn of the year counts as one: the year is taken as a ring.
    private static (int Missing, int Longest, int At) Count(double[] values)
    {
        int missing = 0, longest = 0, at = 0, run = 0;
        var start = Array.FindIndex(values, v => !double.IsNaN(v));
        if (start < 0)
        {
            return (values.Length, values.Length, 0);
        }
        for (var k = 0; k < values.Length; k++)
        {
            var i = (start + k) % values.Length;
            run = double.IsNaN(values[i]) ? run + 1 : 0;
            missing += run > 0 ? 1 : 0;
            if (run > longest)
            {
                (longest, at) = (run, (i - run + 1 + values.Length) % values.Length);
            }
        }
        return (missing, longest, at);
    }

    private void Fill(double[] values, EpwColumn column, int missing, int longest)
    {
        if (missing == 0)
        {
            return;
        }
        var n = values.Length;
        var start = Array.FindIndex(values, v => !double.IsNaN(v));
        for (var k = 0; k < n; k++)
        {
            var before = (start + k) % n;
            var run = 0;
            while (double.IsNaN(values[(before + run + 1) % n]))
            {
                run++;
            }
            var after = values[(before + run + 1) % n];
            for (var j = 1; j <= run; j++)
            {
                values[(before + j) % n] = values[before] + (after - values[before]) * j / (run + 1);
            }
            k += run;
        }
        _filled.Add(new(column.Name, missing, longest));
    }
}
