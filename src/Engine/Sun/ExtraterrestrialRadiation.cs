namespace Runnel.Engine.Sun;

/// <summary>Radiation on the level above the air.</summary>
/// <remarks>Source: FAO-56 (Allen, Pereira, Raes and Smith 1998), equations 21 and 28, solar constant 0.0820 MJ/m²/min (1367 W/m²). Newer
/// measurements put the constant at 1361 W/m² (Kopp and Lean 2011, from memory): 0.4 % less.</remarks>
public static class ExtraterrestrialRadiation
{
    /// <summary>Solar constant, W/m².</summary>
    public const double SolarConstant = 0.0820e6 / 60;

    private const double PerDay = 24 * 60 / Math.PI * 0.0820;

    /// <summary>Radiation of a day.</summary>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <returns>MJ/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>R_a = (24·60/π) G_sc d_r (ω_s sin φ sin δ + cos φ cos δ sin ω_s). Error: 1 % in summer; near the polar night its few tenths of a
    /// megajoule are no better than the declination.</remarks>
    public static double Fao56(double latitude, double day)
    {
        var declination = DayLength.Declination(day);
        var sunset = DayLength.SunsetAngle(latitude, declination) * Angle.Degree;
        return Math.Max(0, PerDay * DayLength.InverseDistance(day) * (sunset * Angle.Sin(latitude) * Angle.Sin(declination)
            + Angle.Cos(latitude) * Angle.Cos(declination) * Math.Sin(sunset)));
    }

    /// <summary>Mean sine of the sun's elevation over a stretch of the day, night counting as nothing.</summary>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="declination">Degrees north, from −24 to 24.</param>
    /// <param name="from">Hour angle at its begin, degrees, from −180 to 180.</param>
    /// <param name="to">Hour angle at its end, above <paramref name="from"/>, to 180.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>The integral of FAO-56 equation 28, cut at sunrise and sunset, over the length of the stretch.</remarks>
    public static double MeanSine(double latitude, double declination, double from, double to)
    {
        var sunset = DayLength.SunsetAngle(latitude, declination);
        Range.Within(from, -180, 180);
        Range.Within(to, Math.BitIncrement(from), 180);
        return MeanSine(sunset, Angle.Sin(latitude) * Angle.Sin(declination), Angle.Cos(latitude) * Angle.Cos(declination), from, to);
    }

    /// <summary>The same for many hours of one day: the products sin φ sin δ and cos φ cos δ are made once.</summary>
    internal static double MeanSine(double sunset, double sines, double cosines, double from, double to)
    {
        var (a, b) = (Math.Max(from, -sunset) * Angle.Degree, Math.Min(to, sunset) * Angle.Degree);
        return a >= b ? 0 : Math.Max(0, ((b - a) * sines + cosines * (Math.Sin(b) - Math.Sin(a))) / ((to - from) * Angle.Degree));
    }
}
