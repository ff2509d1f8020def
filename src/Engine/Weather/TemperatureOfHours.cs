using Runnel.Engine.Quantities;
using Runnel.Engine.Sun;

namespace Runnel.Engine.Weather;

/// <summary>Hours of air temperature: a sine by day, a decay by night, through the lowest and highest temperature of each day.</summary>
/// <remarks>Source: after Parton and Logan 1981, A model for diurnal variation in soil and air temperature, Agricultural Meteorology 23, 205-216, with
/// their constants for air at 1.5 m, the lag of the maximum 1.86 h and the decay 2.20 (from memory). Simplified: the lowest temperature comes at
/// sunrise itself; the decay is stretched to reach it, where theirs stops short; days under 6 h or over 20 h are taken as 6 h or 20 h.</remarks>
internal static class TemperatureOfHours
{
    private const double Lag = 1.86;
    private const double Decay = 2.20;
    private const double ShortestDay = 6;
    private const double LongestDay = 20;
    private const int PerDay = 24;

    private static readonly double Rest = Math.Exp(-Decay);

    /// <summary>Fills the hours.</summary>
    /// <param name="latitude">Degrees north.</param>
    /// <param name="middle">Middle between lowest and highest of each day, °C.</param>
    /// <param name="range">Highest less lowest of each day, K.</param>
    /// <param name="hours">Filled, °C at the middle of each hour.</param>
    public static void Fill(double latitude, ReadOnlySpan<double> middle, ReadOnlySpan<double> range, Span<double> hours)
    {
        var last = YearCalendar.Days - 1;
        var before = Length(latitude, last);
        var length = Length(latitude, 0);
        for (var d = 0; d <= last; d++)
        {
            var next = d == last ? 0 : d + 1;
            var previous = d == 0 ? last : d - 1;
            var after = Length(latitude, next);
            var lowest = middle[d] - range[d] / 2;
            var (sunrise, sunset) = (12 - length / 2, 12 + length / 2);
            for (var h = 0; h < PerDay; h++)
            {
                var t = h + 0.5;
                hours[d * PerDay + h] = t < sunrise
                    ? Night(AtSunset(middle[previous], range[previous], before), lowest, t + 12 - before / 2, 12 - before / 2 + sunrise)
                    : t <= sunset
                        ? lowest + range[d] * Math.Sin(Math.PI * (t - sunrise) / (length + 2 * Lag))
                        : Night(AtSunset(middle[d], range[d], length), middle[next] - range[next] / 2, t - sunset, 12 - length / 2 + 12 - after / 2);
            }
            (before, length) = (length, after);
        }
    }

    private static double Length(double latitude, int day) => Math.Clamp(DayLength.Geometric(latitude, day + 1), ShortestDay, LongestDay);

    private static double AtSunset(double middle, double range, double length) => middle - range / 2 + range * Math.Sin(Math.PI * length / (length + 2 * Lag));

    private static double Night(double from, double to, double since, double whole) =>
        to + (from - to) * (Math.Exp(-Decay * since / whole) - Rest) / (1 - Rest);
}
