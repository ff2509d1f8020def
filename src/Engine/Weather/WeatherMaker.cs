using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Runnel.Engine.Heat;
using Runnel.Engine.Numerics;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Weather;

/// <summary>Makes up the hours of a year whose monthly means of temperature and radiation are a climate's.</summary>
/// <remarks>
/// After Richardson 1981 (days that resemble the day before), Bendt, Collares-Pereira and Rabl 1981 and Graham, Hollands and Huget 1988 (clearness of
/// days from the month's), Hargreaves and Samani 1985 as in FAO-56 equation 50, read backwards (daily range of temperature from clearness), Parton and
/// Logan 1981 and Collares-Pereira and Rabl 1979 (course of the day) and the old rule that the dew point is near the night's lowest temperature
/// (FAO-56 annex 6). Simplified: no rain; temperature and clearness do not depend on each other but through the daily range; no clouds within a day.
/// The spread of temperatures, the dryness and the wind are rules of our own without a source, tried against public weather files. It is a
/// plausible year, never a forecast, and not the worst one: extremes come out milder than a lifetime's.
/// Monthly means of temperature and radiation are exact. The same seed gives the same year; between machines the last digits may differ with the
/// mathematics library.
/// </remarks>
public static class WeatherMaker
{
    private const int PerDay = 24;
    private const double LeastRange = 2;
    private const double MostRange = 20;
    private const double SunnyDay = 1;

    // Our rules, no source: tried against the public weather files whose means are in the catalogue.
    private const double SpreadAtLeast = 0.6;
    private const double SpreadPerHalfRange = 0.28;
    private const double SpreadWinterShare = 0.4;
    private const double DryClearness = 0.52;
    private const double DryKelvins = 45;
    private const double DriestKelvins = 12;
    private const double WindSpread = 0.4;
    private const double WindLikeness = 0.45;
    private const double WindByDay = 0.25;
    private const double WindiestHour = 14.5;
    private const double DewHour = 6;

    /// <summary>A year from the likely values of a climate.</summary>
    /// <param name="climate">The climate.</param>
    /// <param name="seed">Same seed, same year.</param>
    /// <param name="habits">What monthly means do not tell; guesses when left out.</param>
    public static WeatherYear Make(Climate climate, ulong seed, WeatherHabits? habits = null)
    {
        ArgumentNullException.ThrowIfNull(climate);
        double[] air = [.. climate.Air.Select(a => a.Likely)];
        double[] radiation = [.. climate.Radiation.Select(r => Units.MegajoulePerSquareMetreDay.FromSi(r.Likely))];
        return Make($"hours made up from the months of {climate.Name}, seed {seed}", climate.Latitude, air, radiation, seed, habits);
    }

    /// <summary>A year from twelve means.</summary>
    /// <param name="source">Where the means come from.</param>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="air">Mean air temperature of each month from January, °C, from −60 to 50.</param>
    /// <param name="radiation">Mean daily global radiation of each month, MJ/m²/d, from 0 to 46.</param>
    /// <param name="seed">Same seed, same year.</param>
    /// <param name="habits">What monthly means do not tell; guesses when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <exception cref="ArgumentException">Not twelve months.</exception>
    public static WeatherYear Make(
        string source, double latitude, ReadOnlySpan<double> air, ReadOnlySpan<double> radiation, ulong seed, WeatherHabits? habits = null)
    {
        Check(latitude, air, radiation);
        var ways = (habits ?? new()).Checked();
        var random = new SplitMix64(seed);
        var days = new double[YearCalendar.Days];

        Persistence.Fill(days, ways.ClearnessLikeness, random);
        var sun = new RadiationOfHours(latitude);
        sun.Make(radiation, days);

        Persistence.Fill(days, ways.TemperatureLikeness, random);
        var temperature = Temperature(latitude, air, days, sun, ways);
        var humidity = Humidity(temperature, sun);

        Persistence.Fill(days, WindLikeness, random);
        return new()
        {
            Source = source,
            Latitude = latitude,
            SolarTime = true,
            MadeUp = true,
            Air = Freeze(temperature),
            Humidity = Freeze(humidity),
            Global = Freeze(sun.Global),
            Direct = Freeze(sun.Direct),
            Diffuse = Freeze(sun.Diffuse),
            Wind = Freeze(Wind(days, ways.Wind)),
            CutMonths = sun.Cut,
        };
    }

    private static ImmutableArray<double> Freeze(double[] values) => ImmutableCollectionsMarshal.AsImmutableArray(values);

    private static void Check(double latitude, ReadOnlySpan<double> air, ReadOnlySpan<double> radiation)
    {
        Range.Within(latitude, -90, 90);
        if (air.Length != YearCalendar.Months || radiation.Length != YearCalendar.Months)
        {
            throw new ArgumentException("a year has twelve months", air.Length == YearCalendar.Months ? nameof(radiation) : nameof(air));
        }
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            Range.Within(air[m], -60, 50, nameof(air));
            Range.Within(radiation[m], 0, 46, nameof(radiation));
        }
    }

    private static double[] Temperature(double latitude, ReadOnlySpan<double> air, double[] days, RadiationOfHours sun, WeatherHabits ways)
    {
        var hours = new double[WeatherYear.Hours];
        MonthCurve.Add(air, hours);
        double mean = 0, low = air[0], high = air[0];
        foreach (var value in air)
        {
            mean += value / YearCalendar.Months;
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }
        var half = (high - low) / 2;
        var spread = ways.TemperatureSpread ?? SpreadAtLeast + SpreadPerHalfRange * half;
        var range = new double[YearCalendar.Days];
        var month = 0;
        for (var d = 0; d < YearCalendar.Days; d++)
        {
            var usual = hours[d * PerDay + PerDay / 2];
            // Winters are less steady than summers.
            var winter = half > 0 ? Math.Clamp((mean - usual) / half, -1, 1) : 0;
            days[d] = usual + spread * (1 + SpreadWinterShare * winter) * days[d];
            while (d >= YearCalendar.Start[month] + YearCalendar.Length[month])
            {
                month++;
            }
            // The rule holds for the month; its days are spread in proportion to their clearness.
            var squared = sun.Above(d) > SunnyDay ? sun.MonthlyClearness[month] * sun.Clearness[d] : 0;
            range[d] = Math.Clamp(squared / (ways.RangeCoefficient * ways.RangeCoefficient), LeastRange, MostRange);
        }
        TemperatureOfHours.Fill(latitude, days, range, hours);
        Span<double> off = stackalloc double[YearCalendar.Months];
        MonthCurve.Means(hours, off);
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            off[m] = air[m] - off[m];
        }
        MonthCurve.Add(off, hours);
        return hours;
    }

    private static double[] Humidity(double[] air, RadiationOfHours sun)
    {
        var dew = new double[YearCalendar.Days];
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            var dry = Math.Clamp(DryKelvins * (sun.MonthlyClearness[m] - DryClearness), 0, DriestKelvins);
            for (var d = YearCalendar.Start[m]; d < YearCalendar.Start[m] + YearCalendar.Length[m]; d++)
            {
                var lowest = air[d * PerDay];
                foreach (var t in air.AsSpan(d * PerDay, PerDay))
                {
                    lowest = Math.Min(lowest, t);
                }
                dew[d] = lowest - dry;
            }
        }
        var humidity = new double[WeatherYear.Hours];
        for (var h = 0; h < humidity.Length; h++)
        {
            var at = (h + 0.5 - DewHour) / PerDay;
            var day = (int)Math.Floor(at);
            var share = at - day;
            var point = dew[day < 0 ? YearCalendar.Days - 1 : day] * (1 - share) + dew[(day + 1) % YearCalendar.Days] * share;
            var t = Math.Clamp(air[h], DewPoint.MinTemperature, DewPoint.MaxTemperature);
            humidity[h] = DewPoint.Humidity(t, Math.Clamp(point, DewPoint.MinTemperature, t)) / 100;
        }
        return humidity;
    }

    private static double[] Wind(double[] days, double mean)
    {
        var wind = new double[WeatherYear.Hours];
        var sum = 0.0;
        for (var h = 0; h < wind.Length; h++)
        {
            wind[h] = Math.Exp(WindSpread * days[h / PerDay]) * (1 + WindByDay * Math.Cos(2 * Math.PI * (h % PerDay + 0.5 - WindiestHour) / PerDay));
            sum += wind[h];
        }
        var scale = mean * wind.Length / sum;
        for (var h = 0; h < wind.Length; h++)
        {
            wind[h] *= scale;
        }
        return wind;
    }
}
