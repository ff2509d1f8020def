namespace Runnel.Engine.Flow;

/// <summary>What a pump passes on to the water, and what of its electricity that is.</summary>
public static class PumpPower
{
    internal const double MinWatts = 0.01;
    internal const double MaxWatts = 1e6;

    /// <summary>Power in the moved water.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <param name="head">Head, m, from 0 to 1000.</param>
    /// <returns>Power, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>P = ρ g Q H, ρ 998.2 kg/m³ (20 °C): 1 m³/h lifted by 1 m is 2.72 W.</remarks>
    public static double Hydraulic(double flow, double head) =>
        998.2 * WaterProperties.Gravity * Range.Within(flow, 0, Limits.MaxFlow) * Limits.Head(head);

    /// <summary>Share of the electricity that ends up in the water.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <param name="head">Head, m, from 0 to 1000.</param>
    /// <param name="watts">Power at the plug, W, from 0.01 to a million.</param>
    /// <returns>Share; above 1 only when one of the three numbers is wrong.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>η = ρ g Q H/P: pump, motor and drive together, their product and not their average. Source: J. Evans, Pumps and Systems.</remarks>
    public static double WireToWater(double flow, double head, double watts) =>
        Hydraulic(flow, head) / Range.Within(watts, MinWatts, MaxWatts);
}
