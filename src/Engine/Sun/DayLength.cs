namespace Runnel.Engine.Sun;

/// <summary>The sun's course on a day of the year, by the simple forms of FAO-56: good for monthly sums, not for pointing at the sun.</summary>
/// <remarks>Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), equations 23 to 25 and 34. The declination is up to
/// 1.4° off near the equinoxes (against Spencer 1971 and the sun itself), and so day length at 52° is up to a quarter of an hour off there.</remarks>
public static class DayLength
{
    internal const double MaxDay = 366;
    internal const double MaxDeclination = 24;

    /// <summary>Declination of the sun.</summary>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <returns>Degrees north of the equator.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>δ = 0.409 sin(2π J / 365 − 1.39) rad. FAO-56 equation 24.</remarks>
    public static double Declination(double day) =>
        0.409 * Math.Sin(2 * Math.PI * Range.Within(day, 1, MaxDay) / 365 - 1.39) / Angle.Degree;

    /// <summary>Square of the mean distance of the sun over that of the day.</summary>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>d_r = 1 + 0.033 cos(2π J / 365). FAO-56 equation 23.</remarks>
    public static double InverseDistance(double day) => 1 + 0.033 * Math.Cos(2 * Math.PI * Range.Within(day, 1, MaxDay) / 365);

    /// <summary>Hour angle at which the sun's centre sets behind a level horizon, without refraction.</summary>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="declination">Degrees north, from −24 to 24.</param>
    /// <returns>Degrees: 180 in polar day, 0 in polar night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>ω_s = arccos(−tan φ tan δ). FAO-56 equation 25.</remarks>
    public static double SunsetAngle(double latitude, double declination) => SunsetAngle(latitude, declination, 0);

    /// <summary>Hours from sunrise to sunset of the sun's centre, without refraction.</summary>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <returns>Hours.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>N = 24 ω_s / π. FAO-56 equation 34.</remarks>
    public static double Geometric(double latitude, double day) => SunsetAngle(latitude, Declination(day)) / 7.5;

    /// <summary>Hours from the first to the last sight of the sun's rim.</summary>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="declination">Declination of the sun, degrees north, from −24 to 24.</param>
    /// <returns>Hours.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>cos ω = (sin(−0.8333°) − sin φ sin δ)/(cos φ cos δ), twice ω over 15° an hour. Source: the spherical triangle; the depth of
    /// 0.8333° is that of Reda and Andreas 2003.</remarks>
    public static double WithRefraction(double latitude, double declination) => SunsetAngle(latitude, declination, Refraction.Horizon) / 7.5;

    private static double SunsetAngle(double latitude, double declination, double horizon)
    {
        var (sinLatitude, cosLatitude) = Math.SinCos(Range.Within(latitude, -90, 90) * Angle.Degree);
        var (sin, cos) = Math.SinCos(Range.Within(declination, -MaxDeclination, MaxDeclination) * Angle.Degree);
        var over = Angle.Sin(horizon) - sinLatitude * sin;
        // At a pole the divisor vanishes and only its sign decides.
        return Math.Acos(Math.Clamp(over / Math.Max(cosLatitude * cos, 1e-12), -1, 1)) / Angle.Degree;
    }
}
