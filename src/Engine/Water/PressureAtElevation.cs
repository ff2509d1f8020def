namespace Runnel.Engine.Water;

/// <summary>Mean air pressure at an elevation.</summary>
public static class PressureAtElevation
{
    /// <summary>Mean air pressure at an elevation, in the standard atmosphere.</summary>
    /// <param name="elevation">Height above sea level, m, from -430 (the lowest dry land) to 5500.</param>
    /// <returns>Air pressure, kPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below -430 m, above 5500 m, or not a number.</exception>
    /// <remarks>P = 101.325 (1 - 2.25577e-5 h)^5.25588, P in kPa, h in m. Source: ISO 2533:1975, Standard atmosphere (a fall of 6.5 K
    /// for each km from 15 °C). Claimed error: none, it is a convention; weather moves the pressure of a place by 2 to 3 %, and published
    /// mean tables differ by 0.5 %. Not for: a barometer reading "reduced to sea level".</remarks>
    public static double StandardAtmosphere(double elevation)
    {
        var h = Range.Within(elevation, -430, 5500);
        return 101.325 * Math.Pow(1 - 2.25577e-5 * h, 5.25588);
    }
}
