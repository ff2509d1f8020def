namespace Runnel.Engine.Flow;

/// <summary>An overflow or standpipe that leads water from one vessel through a pipe into a lower one.</summary>
/// <param name="Rim">Inside diameter of the mouth, m; the pipe's own when nothing else is fitted.</param>
/// <param name="Pipe">The pipe from mouth to outlet with its losses: entrance, fittings, and 1 for the exit.</param>
/// <param name="Drop">Height of the mouth above the outlet or, where that is under water, above the lower vessel's surface, m, from 0 to 50.</param>
/// <remarks>
/// It carries the least of what its mouth takes in and what its pipe passes when full. Hair, roots, leaves and a screen take from the
/// mouth first: a drain that just suffices on paper floods the room. Size it for twice the flow, and give each vessel a second one.
/// </remarks>
public sealed record GravityDrain(double Rim, FullPipe Pipe, double Drop)
{
    internal const double MaxDrop = 50;

    /// <summary>Share of its capacity that a drain should be used to at most. Common practice, no source: half.</summary>
    public const double PrudentShare = 0.5;

    /// <summary>What it carries with water standing above its mouth.</summary>
    /// <param name="head">Height of the water above the mouth, m, from 0 to 5.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public double Capacity(double head, double viscosity) => Math.Min(Overflow.Rim(Rim, head), PipeCapacity(head, viscosity));

    /// <summary>What holds it back with water standing above its mouth.</summary>
    /// <param name="head">Height of the water above the mouth, m, from 0 to 5.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public DrainLimit LimitAt(double head, double viscosity) =>
        PipeCapacity(head, viscosity) < Overflow.Rim(Rim, head) ? DrainLimit.Pipe
        : Overflow.Weir(Rim, head) <= Overflow.Rim(Rim, head) ? DrainLimit.Rim
        : DrainLimit.DrownedMouth;

    /// <summary>How high water stands above the mouth when a flow runs off.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <returns>Height, m; infinite when 5 m do not suffice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public double HeadFor(double flow, double viscosity)
    {
        var forPipe = Math.Max(0, Pipe.HeadFor(Range.Within(flow, 0, Limits.MaxFlow), viscosity) - Range.Within(Drop, 0, MaxDrop));
        return forPipe > Overflow.MaxHead ? double.PositiveInfinity : Math.Max(forPipe, Overflow.HeadFor(Rim, flow));
    }

    /// <summary>True if air rises freely against a flow, so that the drain neither gurgles nor sucks itself empty in turns.</summary>
    /// <param name="flow">Flow, m³/s, from 0 to 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public bool IsQuiet(double flow) => PipeFroude.Of(flow, Pipe.Diameter) <= PipeFroude.SelfVenting;

    private double PipeCapacity(double head, double viscosity) =>
        Pipe.FlowUnder(Range.Within(Drop, 0, MaxDrop) + Range.Within(head, 0, Overflow.MaxHead), viscosity);
}

/// <summary>What holds a drain back.</summary>
public enum DrainLimit
{
    /// <summary>The rim, as a weir: a wider mouth helps.</summary>
    Rim,

    /// <summary>The mouth, drowned: a wider mouth helps.</summary>
    DrownedMouth,

    /// <summary>The pipe: a wider or shorter pipe, fewer elbows, or more drop help.</summary>
    Pipe,
}
