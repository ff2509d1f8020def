namespace Runnel.Engine.Flow;

/// <summary>Whether air can rise in a pipe against the water that falls in it.</summary>
/// <remarks>
/// Fr = V/√(g D), V as if the pipe were full. Below 0.3 air escapes upwards and water trickles down the wall; from 0.3 to 1 air is
/// carried along and let go in fits; above 1 it is swept out and the pipe runs full. Source: Hills 1983, Designing piping for gravity flow,
/// Chemical Engineering 90(18), 111-114, as quoted in public process-engineering texts, which call the limits cautious: trickling may last
/// beyond 0.3, sweeping may begin before 1. A long bubble rises at 0.35 √(g D) in still water (Dumitrescu 1943; Davies and Taylor 1950; from
/// memory), which is why.
/// </remarks>
public static class PipeFroude
{
    internal const double Max = 10;

    /// <summary>Up to here air escapes against the water: a quiet drain, a siphon that never starts.</summary>
    public const double SelfVenting = 0.3;

    /// <summary>From here on air is swept out: a pipe that runs full.</summary>
    public const double Sweeping = 1.0;

    /// <summary>Froude number of a flow in an upright pipe.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <returns>Froude number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static double Of(double flow, double diameter) =>
        PipeVelocity.Mean(Range.Within(flow, 0, Limits.MaxFlow), diameter) / Math.Sqrt(WaterProperties.Gravity * diameter);

    /// <summary>Flow at a Froude number.</summary>
    /// <param name="froude">Froude number, from 0 to 10.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static double Flow(double froude, double diameter) =>
        Range.Within(froude, 0, Max) * PipeVelocity.Area(diameter) * Math.Sqrt(WaterProperties.Gravity * diameter);
}
