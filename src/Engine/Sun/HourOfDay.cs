namespace Runnel.Engine.Sun;

/// <summary>How the radiation of a day falls on its hours.</summary>
public static class HourOfDay
{
    internal const double MinSunset = 5;

    /// <summary>Share of a day's global radiation in the hour around an hour angle.</summary>
    /// <param name="sunset">Hour angle of sunset, degrees, from 5 to 180.</param>
    /// <param name="hour">Hour angle of the middle of the hour, degrees, from −180 to 180.</param>
    /// <returns>Share of the day in one hour; 0 at night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>r = (π/24)(a + b cos ω)(cos ω − cos ω_s)/(sin ω_s − ω_s cos ω_s), a = 0.409 + 0.5016 sin(ω_s − 60°),
    /// b = 0.6609 − 0.4767 sin(ω_s − 60°). Source: Collares-Pereira and Rabl 1979, The average distribution of solar radiation, Solar Energy 22,
    /// 155-164 (coefficients from memory). The 24 shares add up to 1 within 1.5 %: divide by their sum where the day must close. Not for: days of
    /// drifting cloud taken hour by hour.</remarks>
    public static double CollaresPereiraRabl(double sunset, double hour)
    {
        var angle = Range.Within(sunset, MinSunset, 180);
        var (sin, cos) = Math.SinCos(angle * Angle.Degree);
        var cosHour = Angle.Cos(Range.Within(hour, -180, 180));
        if (cosHour <= cos)
        {
            return 0;
        }
        var shift = Angle.Sin(angle - 60);
        var (a, b) = (0.409 + 0.5016 * shift, 0.6609 - 0.4767 * shift);
        return Math.Max(0, Math.PI / 24 * (a + b * cosHour) * (cosHour - cos) / (sin - angle * Angle.Degree * cos));
    }
}
