namespace Runnel.Engine.Flow;

/// <summary>Water over the rim of an upright pipe.</summary>
public static class Overflow
{
    internal const double MaxHead = 5;

    /// <summary>Weir coefficient, m^0.5/s; 1.55 to 1.84 in print (2.8 to 3.33 in feet).</summary>
    public const double WeirCoefficient = 1.84;

    /// <summary>Flow over the rim as over a weir of its circumference.</summary>
    /// <param name="diameter">Inside diameter of the rim, m, from 0.001 to 2.</param>
    /// <param name="head">Height of the water above the rim, m, from 0 to 5.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = 1.84 π D h^1.5. Source: weir equation of stormwater manuals for risers.</remarks>
    public static double Weir(double diameter, double head) =>
        WeirCoefficient * Math.PI * Limits.Diameter(diameter) * Math.Pow(Range.Within(head, 0, MaxHead), 1.5);

    /// <summary>What an open rim takes in: as a weir, then, drowned, as a hole.</summary>
    /// <param name="diameter">Inside diameter of the rim, m, from 0.001 to 2.</param>
    /// <param name="head">Height of the water above the rim, m, from 0 to 5.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>The smaller of Q = 1.84 π D h^1.5 and Q = 0.6 (π/4) D² √(2 g h); they cross near h = 0.36 D. Source: stages of a riser in
    /// stormwater manuals. Not for: a rim under a screen or cap, a drain line that is too small for it.</remarks>
    public static double Rim(double diameter, double head) =>
        Math.Min(Weir(diameter, head), Orifice.Flow(PipeVelocity.Area(diameter), head));

    /// <summary>How high water has to stand above a rim for it to take in a flow.</summary>
    /// <param name="diameter">Inside diameter of the rim, m, from 0.001 to 2.</param>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <returns>Height, m; infinite when the rim cannot take it in with 5 m above it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static double HeadFor(double diameter, double flow)
    {
        Range.Within(flow, 0, Limits.MaxFlow);
        return Rim(diameter, MaxHead) < flow ? double.PositiveInfinity : Numerics.Root.Rising(h => Rim(diameter, h) - flow, 0, MaxHead);
    }
}
