using Runnel.Engine.Numerics;

namespace Runnel.Engine.Flow;

/// <summary>A run of pipe of one size with what is fitted into it, water filling it.</summary>
/// <param name="Diameter">Inside diameter, m, from 0.001 to 2.</param>
/// <param name="Length">Length, m, from 0 to 20 000.</param>
/// <param name="Loss">Loss coefficients of entrance, fittings and exit together, from 0 to 10 000. A free outlet and one under water both
/// lose one velocity head: count the exit as 1.</param>
/// <param name="Roughness">Absolute roughness, m, from 0 to 0.01 and at most a tenth of the diameter.</param>
public sealed record FullPipe(double Diameter, double Length, double Loss, double Roughness = FullPipe.PlasticRoughness)
{
    /// <summary>Roughness of new plastic pipe, m: EPANET 2.2 manual, table 3.2.</summary>
    public const double PlasticRoughness = 1.5e-6;

    /// <summary>Head that a flow takes, friction, fittings and exit together.</summary>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <returns>Head, m, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public double HeadFor(double flow, double viscosity) =>
        HeadLoss.Pipe(flow, Diameter, Length, Roughness, viscosity) + HeadLoss.Fitting(Loss, flow, Diameter);

    /// <summary>Flow that a head drives through the full pipe.</summary>
    /// <param name="head">Height of the water above the outlet (or above the water that covers it), m, from 0 to 1000.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <returns>Flow, m³/s; at most 2, where the formulas end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number; the pipe resists nothing.</exception>
    /// <remarks>Solves H = (f L/D + ΣK) V²/2g for V. Source: energy equation of steady flow.</remarks>
    public double FlowUnder(double head, double viscosity)
    {
        Limits.Head(head);
        if (HeadFor(Limits.MaxFlow, viscosity) is var most && most <= head)
        {
            return most > 0 ? Limits.MaxFlow : throw new ArgumentOutOfRangeException(nameof(head), head, "a pipe without any loss has no limit");
        }
        return Root.Rising(q => HeadFor(q, viscosity) - head, 0, Limits.MaxFlow);
    }
}
