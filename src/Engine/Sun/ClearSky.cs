namespace Runnel.Engine.Sun;

/// <summary>Global radiation on the level under a cloudless sky.</summary>
public static class ClearSky
{
    internal const double MaxExtraterrestrial = 50;
    internal const double MaxElevation = 6000;

    /// <summary>Radiation of a cloudless day.</summary>
    /// <param name="extraterrestrial">Radiation above the air, MJ/m²/d, from 0 to 50.</param>
    /// <param name="elevation">Height above sea level, m, from −430 to 6000.</param>
    /// <returns>MJ/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>R_so = (0.75 + 2·10⁻⁵ z) R_a. Source: FAO-56 equation 37. Error: a few percent with the haze of the place.</remarks>
    public static double Fao56(double extraterrestrial, double elevation) =>
        (0.75 + 2e-5 * Range.Within(elevation, -430, MaxElevation)) * Range.Within(extraterrestrial, 0, MaxExtraterrestrial);

    /// <summary>Radiation at a moment.</summary>
    /// <param name="zenith">Degrees of the sun from straight above, from 0 to 180.</param>
    /// <returns>W/m²; 0 below the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>GHI = 1098 cos z exp(−0.059/cos z). Source: Haurwitz 1945, Insolation in relation to cloudiness and cloud density, Journal of
    /// Meteorology 2, 154-166. Error: 5 to 10 % with haze and height, neither of which it knows.</remarks>
    public static double Haurwitz(double zenith)
    {
        var cos = Angle.Cos(Range.Within(zenith, 0, 180));
        return cos <= 0 ? 0 : 1098 * cos * Math.Exp(-0.059 / cos);
    }
}
