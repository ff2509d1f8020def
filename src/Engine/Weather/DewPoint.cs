namespace Runnel.Engine.Weather;

/// <summary>Temperature at which air begins to drop its water, and the humidity that goes with it.</summary>
/// <remarks>Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), equations 10, 11 and 14, and 3-11 of its annex 3
/// for the inverse. Over water at all temperatures, as weather services count humidity. Error: under 0.3 % in pressure from 0 to 50 °C.</remarks>
public static class DewPoint
{
    internal const double MinTemperature = -70;
    internal const double MaxTemperature = 70;

    /// <summary>Least humidity for which a dew point is given, %.</summary>
    public const double MinHumidity = 0.5;

    private const double A = 17.27;
    private const double B = 237.3;

    /// <summary>Saturation vapour pressure.</summary>
    /// <param name="temperature">°C, from −70 to 70.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>e° = 610.8 exp(17.27 T / (T + 237.3)). FAO-56 equation 11.</remarks>
    public static double Saturation(double temperature)
    {
        var t = Range.Within(temperature, MinTemperature, MaxTemperature);
        return 610.8 * Math.Exp(A * t / (t + B));
    }

    /// <summary>Dew point of air of a relative humidity.</summary>
    /// <param name="air">Air temperature, °C, from −70 to 70.</param>
    /// <param name="humidity">Relative humidity, %, from 0.5 to 100.</param>
    /// <returns>Dew point, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>T_dew = 237.3 γ / (17.27 − γ), γ = ln(RH/100) + 17.27 T / (T + 237.3).</remarks>
    public static double OfHumidity(double air, double humidity)
    {
        var t = Range.Within(air, MinTemperature, MaxTemperature);
        var gamma = Math.Log(Range.Within(humidity, MinHumidity, 100) / 100) + A * t / (t + B);
        return B * gamma / (A - gamma);
    }

    /// <summary>Relative humidity of air of a dew point.</summary>
    /// <param name="air">Air temperature, °C, from −70 to 70.</param>
    /// <param name="dewPoint">Dew point, °C, from −70 to the air temperature.</param>
    /// <returns>%.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static double Humidity(double air, double dewPoint)
    {
        var t = Range.Within(air, MinTemperature, MaxTemperature);
        var d = Range.Within(dewPoint, MinTemperature, t);
        return 100 * Math.Exp(A * d / (d + B) - A * t / (t + B));
    }
}
