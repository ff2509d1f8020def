namespace Runnel.Engine.Flow;

/// <summary>Water that runs down a sloping round pipe without filling it.</summary>
public static class Manning
{
    internal const double MinSlope = 1e-6;
    internal const double MaxSlope = 1;
    internal const double MinRoughness = 0.005;
    internal const double MaxRoughness = 0.1;

    /// <summary>Depth at which a round pipe carries most, as a share of its diameter.</summary>
    public const double FullestDepth = 0.93818;

    /// <summary>Manning's n of smooth plastic drain, a cautious round value: 0.009 in plumbing handbooks (from memory), 0.011 to 0.015 in the EPANET 2.2 manual.</summary>
    public const double PlasticRoughness = 0.011;

    /// <summary>Wetted section of a round pipe.</summary>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="depth">Depth of water as a share of the diameter, from 0 to 1.</param>
    /// <returns>Area, m², and wetted perimeter, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static (double Area, double Perimeter) Section(double diameter, double depth)
    {
        var angle = 2 * Math.Acos(1 - 2 * Range.Within(depth, 0, 1));
        return (Limits.Diameter(diameter) * diameter / 8 * (angle - Math.Sin(angle)), diameter * angle / 2);
    }

    /// <summary>Flow in a round pipe at a depth.</summary>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="depth">Depth of water as a share of the diameter, from 0 to 1.</param>
    /// <param name="slope">Fall, m per m, from 1e-6 to 1.</param>
    /// <param name="roughness">Manning's n, from 0.005 to 0.1.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = A R^(2/3) S^(1/2)/n, R = A/P. Source: Manning; same n at every depth. Not for: short drains of a metre or two, which the
    /// entrance rules, drains steeper than one in ten.</remarks>
    public static double Flow(double diameter, double depth, double slope, double roughness = PlasticRoughness)
    {
        var (area, perimeter) = Section(diameter, depth);
        Range.Within(slope, MinSlope, MaxSlope);
        Range.Within(roughness, MinRoughness, MaxRoughness);
        return perimeter > 0 ? area * Math.Pow(area / perimeter, 2.0 / 3) * Math.Sqrt(slope) / roughness : 0;
    }

    /// <summary>Depth at which a round pipe carries a flow.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="slope">Fall, m per m, from 1e-6 to 1.</param>
    /// <param name="roughness">Manning's n, from 0.005 to 0.1.</param>
    /// <returns>Depth as a share of the diameter, up to <see cref="FullestDepth"/>; null when it carries no such flow unless under pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static double? Depth(double flow, double diameter, double slope, double roughness = PlasticRoughness)
    {
        Range.Within(flow, 0, Limits.MaxFlow);
        return Flow(diameter, FullestDepth, slope, roughness) < flow
            ? null
            : Numerics.Root.Rising(y => Flow(diameter, y, slope, roughness) - flow, 0, FullestDepth);
    }
}
