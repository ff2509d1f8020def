namespace Runnel.Engine.Filter;

/// <summary>How fast nitrifying bacteria can grow.</summary>
public static class NitrifierGrowth
{
    /// <summary>Ammonia oxidisers at 20 °C, 1/d: 0.47 at 15 °C with 0.098 for each °C (US EPA 1975); Wiesmann 1994 gives 0.77.</summary>
    public const double AmmoniaOxidisersAt20 = 0.77;

    /// <summary>Exponent for each °C, ammonia oxidisers: US EPA 1975.</summary>
    public const double AmmoniaOxidisersExponent = 0.098;

    /// <summary>Nitrite oxidisers at 20 °C, 1/d: Wiesmann 1994, from memory.</summary>
    public const double NitriteOxidisersAt20 = 1.08;

    /// <summary>Exponent for each °C, nitrite oxidisers: Knowles, Downing and Barrett 1965, from memory.</summary>
    public const double NitriteOxidisersExponent = 0.0587;

    /// <summary>Greatest specific growth of either group, with ammonia or nitrite, oxygen and alkalinity in plenty.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 36.</param>
    /// <param name="at20">Growth at 20 °C, 1/d, from 0.1 to 3.</param>
    /// <param name="exponent">Exponent for each °C, from 0 to 0.15.</param>
    /// <returns>Specific growth, 1/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>μ = μ20 exp(a (T − 20)). Source: US EPA 1975, Process design manual for nitrogen control (from memory): μ = 0.47 exp(0.098 (T − 15)).
    /// Error: textbooks give 0.3 to 1.1 per day at 20 °C. Not for: over about 32 °C, where it levels off and falls.</remarks>
    public static double Arrhenius(double temperature, double at20 = AmmoniaOxidisersAt20, double exponent = AmmoniaOxidisersExponent) =>
        Range.Within(at20, 0.1, 3) * Math.Exp(Range.Within(exponent, 0, 0.15) * (Range.Within(temperature, 0, 36) - 20));
}
