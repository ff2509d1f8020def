using Runnel.Engine.Numerics;

namespace Runnel.Engine.Weather;

/// <summary>Days that resemble the day before: normal numbers of mean 0 and spread 1, each partly the one before it.</summary>
/// <remarks>x_t = φ x_(t−1) + √(1 − φ²) e_t, a first-order autoregressive series, started from its own long-run law. Source: textbook; the use
/// for daily weather after Richardson 1981, Stochastic simulation of daily precipitation, temperature, and solar radiation, Water Resources
/// Research 17, 182-190.</remarks>
public static class Persistence
{
    /// <summary>Fills an array with such days.</summary>
    /// <param name="days">Filled.</param>
    /// <param name="likeness">Correlation φ of one day with the next, from 0 to below 1.</param>
    /// <param name="random">The generator.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static void Fill(Span<double> days, double likeness, SplitMix64 random)
    {
        ArgumentNullException.ThrowIfNull(random);
        Range.Within(likeness, 0, 0.999);
        var fresh = Math.Sqrt(1 - likeness * likeness);
        var x = Normal(random);
        for (var i = 0; i < days.Length; i++)
        {
            x = i == 0 ? x : likeness * x + fresh * Normal(random);
            days[i] = x;
        }
    }

    /// <summary>Share of the normal law below a value.</summary>
    /// <remarks>Source: Abramowitz and Stegun 1964, equation 26.2.17; error under 7.5e-8.</remarks>
    public static double ShareBelow(double x)
    {
        var t = 1 / (1 + 0.2316419 * Math.Abs(x));
        var tail = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI)
            * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return x > 0 ? 1 - tail : tail;
    }

    // Box and Muller 1958, one of the pair.
    private static double Normal(SplitMix64 random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
