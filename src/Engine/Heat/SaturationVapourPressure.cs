namespace Runnel.Engine.Heat;

/// <summary>Vapour pressure of air that can hold no more water.</summary>
public static class SaturationVapourPressure
{
    internal const double Min = -40;
    internal const double Max = 100;

    /// <summary>Saturation vapour pressure over flat fresh water; over ice below 0 °C.</summary>
    /// <param name="temperature">Temperature, °C, from −40 to 100.</param>
    /// <returns>Saturation vapour pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>ln p = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T, T in K; over ice ln p = C1/T + C2 + C3 T + C4 T² + C5 T³ + C6 T⁴ + C7 ln T.
    /// Source: Hyland and Wexler 1983, ASHRAE Transactions 89(2A), as printed in ASHRAE Handbook Fundamentals (2017), chapter 1,
    /// equations 5 and 6 (coefficients from memory, proven by that chapter's table). Error: under 300 ppm of that table.
    /// Not for: sea water.</remarks>
    public static double HylandWexler(double temperature)
    {
        var t = Range.Within(temperature, Min, Max) + 273.15;
        return temperature < 0
            ? Math.Exp(-5.6745359e3 / t + 6.3925247 - 9.6778430e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t
                - 9.4840240e-13 * t * t * t * t + 4.1635019 * Math.Log(t))
            : Math.Exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t
                + 6.5459673 * Math.Log(t));
    }
}
