namespace Runnel.Engine.Flow;

/// <summary>How a pump changes with its speed.</summary>
public static class Affinity
{
    internal const double MinRatio = 0.05;
    internal const double MaxRatio = 5;
    internal const double MaxPower = 1e6;

    /// <summary>Flow at another speed.</summary>
    /// <param name="flow">Flow, any unit of it, m³/s, from 0 to 2.</param>
    /// <param name="ratio">New speed over old, from 0.05 to 5.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q2 = Q1 (n2/n1). Source: affinity laws; Crane TP-410M, example 7-33.</remarks>
    public static double Flow(double flow, double ratio) => Range.Within(flow, 0, Limits.MaxFlow) * Ratio(ratio);

    /// <summary>Head at another speed.</summary>
    /// <param name="head">Head, m, from 0 to 1000.</param>
    /// <param name="ratio">New speed over old, from 0.05 to 5.</param>
    /// <returns>Head, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>H2 = H1 (n2/n1)².</remarks>
    public static double Head(double head, double ratio) => Limits.Head(head) * Ratio(ratio) * ratio;

    /// <summary>Shaft power at another speed.</summary>
    /// <param name="power">Power, W, from 0 to a million.</param>
    /// <param name="ratio">New speed over old, from 0.05 to 5.</param>
    /// <returns>Power, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>P2 = P1 (n2/n1)³. Not for: the plug of a small pump, whose motor loses more than it passes on.</remarks>
    public static double Power(double power, double ratio) => Range.Within(power, 0, MaxPower) * Math.Pow(Ratio(ratio), 3);

    private static double Ratio(double ratio) => Range.Within(ratio, MinRatio, MaxRatio);
}
