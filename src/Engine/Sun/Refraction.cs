namespace Runnel.Engine.Sun;

/// <summary>How much higher the sun is seen than it stands.</summary>
public static class Refraction
{
    internal const double MinElevation = -1;
    internal const double MinPressure = 40;
    internal const double MaxPressure = 110;
    internal const double MinTemperature = -60;
    internal const double MaxTemperature = 60;

    /// <summary>True elevation of the sun's centre, degrees, at which its upper rim is seen to rise: half its disc, 0.26667°, and the
    /// refraction at the horizon, 0.5667°, below.</summary>
    public const double Horizon = -(0.26667 + 0.5667);

    /// <summary>Refraction of light by the air.</summary>
    /// <param name="elevation">True elevation, degrees, from −1 to 90.</param>
    /// <param name="pressure">Air pressure, kPa, from 40 to 110.</param>
    /// <param name="temperature">Air temperature, °C, from −60 to 60.</param>
    /// <returns>Degrees to add.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>R = (P/101)(283/(273 + T)) 1.02 / (60 tan(h + 10.3/(h + 5.11))). Source: Sæmundsson 1986 as given by Meeus 1998, equation 16.4,
    /// and by Reda and Andreas 2003, equation 42. Error: 0.07' above 15° (from memory); near the horizon the weather decides.</remarks>
    public static double Saemundsson(double elevation, double pressure, double temperature)
    {
        var h = Range.Within(elevation, MinElevation, 90);
        return Range.Within(pressure, MinPressure, MaxPressure) / 101 * 283 / (273 + Range.Within(temperature, MinTemperature, MaxTemperature))
            * 1.02 / (60 * Angle.Tan(h + 10.3 / (h + 5.11)));
    }
}
