namespace Runnel.Engine.Sun;

/// <summary>Days counted through, from noon universal time of 1 January 4713 BC.</summary>
public static class JulianDay
{
    /// <summary>Noon universal time of 1 January 2000.</summary>
    public const double J2000 = 2451545;

    internal const double Min = 2415020.5;
    internal const double Max = 2488070.5;

    /// <summary>Julian day of a moment of the Gregorian calendar.</summary>
    /// <param name="year">Year, from 1900 to 2099.</param>
    /// <param name="month">From 1 to 12.</param>
    /// <param name="day">From 1 to 31.</param>
    /// <param name="hour">Hours of universal time since midnight, from −24 to 48.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Source: Meeus 1998, Astronomical Algorithms, 2nd edition, equation 7.1 (from memory; checked against dates printed
    /// elsewhere).</remarks>
    public static double Of(int year, int month, int day, double hour)
    {
        Range.Within(year, 1900, 2099);
        Range.Within(month, 1, 12);
        Range.Within(day, 1, 31);
        Range.Within(hour, -24, 48);
        var (y, m) = month > 2 ? (year, month) : (year - 1, month + 12);
        var century = y / 100;
        return Math.Floor(365.25 * (y + 4716)) + Math.Floor(30.6001 * (m + 1)) + day + (2 - century + century / 4) - 1524.5 + hour / 24;
    }
}
