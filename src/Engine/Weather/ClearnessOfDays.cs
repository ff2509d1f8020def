namespace Runnel.Engine.Weather;

/// <summary>How clear the single days of a month are when only the month's mean is known.</summary>
/// <remarks>Share of days below a clearness k: F = (e^(γ k_min) − e^(γ k))/(e^(γ k_min) − e^(γ k_max)). Source: Bendt, Collares-Pereira and Rabl 1981, The
/// frequency distribution of daily insolation values, Solar Energy 27, 1-5, with k_min 0.05 and the k_max of Hollands and Huget 1983, as both
/// stand in Duffie and Beckman, Solar Engineering of Thermal Processes, section 2.9 (from memory). The exponent γ is not taken from their fit but
/// solved for, so that the days of this very month give its radiation.</remarks>
internal static class ClearnessOfDays
{
    /// <summary>Greatest clearness of a day.</summary>
    public const double Max = 0.85;

    private const double Least = 0.05;
    private const double SteepestExponent = 400;

    /// <summary>
    /// Turns shares of the law into clearness of days whose radiation adds up to a sum.
    /// </summary>
    /// <param name="shares">From 0 to 1 for each day, replaced by its clearness.</param>
    /// <param name="above">Radiation above the air of each day.</param>
    /// <param name="sum">What the days shall bring together; at most <see cref="Max"/> of what is above.</param>
    public static void Fit(Span<double> shares, ReadOnlySpan<double> above, double sum)
    {
        var total = 0.0;
        foreach (var day in above)
        {
            total += day;
        }
        var mean = total > 0 ? sum / total : 0;
        if (mean <= 0)
        {
            shares.Clear();
            return;
        }
        var (low, high) = Ends(mean);
        var (from, to) = (-SteepestExponent, SteepestExponent);
        // Halving to the last bits: the sum grows with the exponent.
        for (var i = 0; i < 60; i++)
        {
            var middle = (from + to) / 2;
            var brought = 0.0;
            for (var d = 0; d < above.Length; d++)
            {
                brought += above[d] * At(shares[d], middle, low, high);
            }
            (from, to) = brought < sum ? (middle, to) : (from, middle);
        }
        var reached = 0.0;
        for (var d = 0; d < above.Length; d++)
        {
            shares[d] = At(shares[d], (from + to) / 2, low, high);
            reached += above[d] * shares[d];
        }
        // Rounding only, unless a month of few days in the sun could not be met.
        for (var d = 0; d < above.Length; d++)
        {
            shares[d] *= sum / reached;
        }
    }

    /// <summary>Least and greatest clearness of the days of a month of a mean clearness.</summary>
    private static (double Low, double High) Ends(double mean)
    {
        var fit = 0.6313 + 0.267 * mean - 11.9 * Math.Pow(mean - 0.75, 8);
        // The fit holds for means of 0.3 to 0.7; outside them the ends keep a little room around the mean.
        return (Math.Min(Least, mean / 3), Math.Clamp(fit, Math.Min(Max, mean + Math.Min(0.1, 1.5 * mean)), Max));
    }

    private static double At(double share, double exponent, double low, double high)
    {
        var width = exponent * (high - low);
        if (Math.Abs(width) < 1e-6)
        {
            return low + share * (high - low);
        }
        // The greater end is taken out of the logarithm, so that nothing overflows.
        return width > 0
            ? high + Math.Log(share + (1 - share) * Math.Exp(-width)) / exponent
            : low + Math.Log(1 - share + share * Math.Exp(width)) / exponent;
    }
}
