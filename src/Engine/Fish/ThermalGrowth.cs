namespace Runnel.Engine.Fish;

/// <summary>How fish gain weight with warmth.</summary>
public static class ThermalGrowth
{
    /// <summary>Weight after a time of growth at one temperature.</summary>
    /// <param name="weight">Weight at the start, g, from 0.01 to 50 000.</param>
    /// <param name="coefficient">Thermal growth coefficient, from 0.01 to 0.4.</param>
    /// <param name="temperature">Water temperature that counts for growth, °C, from 0 to 35.</param>
    /// <param name="days">Time, d, from 0 to 2000.</param>
    /// <returns>Weight, g.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>W = (W0^(1/3) + c/100 T d)^3. Sources: Iwama and Tautz 1981; caution of Jobling 2003: the coefficient moves with size, strain and feed,
    /// and holds only under the optimum temperature. Error: a fifth or more from one stock to another. Not for: water warmer than the
    /// optimum, fish on short rations.</remarks>
    public static double IwamaTautz(double weight, double coefficient, double temperature, double days)
    {
        var root = Math.Cbrt(Range.Within(weight, 0.01, 5e4))
            + Range.Within(coefficient, 0.01, 0.4) / 100 * Range.Within(temperature, 0, 35) * Range.Within(days, 0, 2000);
        return root * root * root;
    }
}
