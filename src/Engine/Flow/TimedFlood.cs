using Runnel.Engine.Numerics;

namespace Runnel.Engine.Flow;

/// <summary>A bed flooded by a pump on a timer: an overflow at its rim, and a small hole near the floor that always drains.</summary>
/// <param name="Area">Inside area of the bed, m², above 0 to 10 000.</param>
/// <param name="Voids">Share of the bed's volume that water can fill, from 0.05 to 1.</param>
/// <param name="Rim">Height of the overflow above the hole, m, above 0 to 3.</param>
/// <param name="RimDiameter">Inside diameter of the overflow, m.</param>
/// <param name="Hole">Area of the hole, or holes together, m², from 1e-8 to 10.</param>
/// <param name="On">How long the pump runs, s, above 0.</param>
/// <param name="Off">How long it rests, s, from 0.</param>
public sealed record TimedFlood(double Area, double Voids, double Rim, double RimDiameter, double Hole, double On, double Off)
{
    internal const double MaxTime = 7 * 86400;

    /// <summary>The cycle that settles in after some days.</summary>
    /// <param name="inflow">Flow of the pump into the bed, m³/s, from 0 to 2.</param>
    /// <returns>Levels, times and volumes of one cycle.</returns>
    /// <remarks>Rising and falling by dh/dt = (Q − Cd a √(2 g h))/S, which has an exact solution; at the rim the rest runs over. Source:
    /// Torricelli's law.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public FloodCycle Run(double inflow)
    {
        Range.Within(inflow, 0, Limits.MaxFlow);
        Range.Within(Area, 1e-6, SiphonBed.MaxArea);
        Range.Within(Voids, SiphonBed.MinVoids, 1);
        Range.Within(Rim, 1e-3, SiphonBed.MaxRim);
        Range.Within(Hole, Orifice.MinArea, Orifice.MaxArea);
        Range.Within(On, 1e-3, MaxTime);
        Range.Within(Off, 0, MaxTime);
        var (low, high) = (0.0, 0.0);
        for (var cycle = 0; cycle < 1000; cycle++)
        {
            high = LevelAfter(low, inflow, On);
            var next = LevelAfter(high, 0, Off);
            var settled = Math.Abs(next - low) < 1e-13;
            low = next;
            if (settled)
            {
                break;
            }
        }
        var store = Area * Voids;
        var k = Leak;
        double? reaches = high >= Rim ? TimeBetween(low, Rim, inflow) : null;
        var atRim = reaches is { } t ? On - t : 0;
        var over = Math.Max(0, (inflow - k * Math.Sqrt(Rim)) * atRim);
        // What flows in before the rim leaves through the hole, sooner or later; at the rim what its height drives.
        var hole = inflow * (On - atRim) + k * Math.Sqrt(Rim) * atRim;
        return new(
            high, low, reaches, 2 * store * Math.Sqrt(high) / k, hole, over,
            atRim > 0 ? Overflow.HeadFor(RimDiameter, Math.Max(0, inflow - k * Math.Sqrt(Rim))) : 0);
    }

    private double Leak => Orifice.Flow(Hole, 1);

    // Time from one level to another at an inflow; infinite when it never gets there.
    private double TimeBetween(double from, double to, double inflow)
    {
        var (a, b, k) = (Math.Sqrt(from), Math.Sqrt(to), Leak);
        if (inflow <= 0)
        {
            return 2 * Area * Voids * (a - b) / k;
        }
        var rest = inflow / k;
        var share = (rest - a) / (rest - b);
        return share > 0 ? 2 * Area * Voids / k * (a - b + rest * Math.Log(share)) : double.PositiveInfinity;
    }

    private double LevelAfter(double from, double inflow, double time)
    {
        var rest = Math.Pow(inflow / Leak, 2);
        if (Math.Abs(rest - from) < 1e-15)
        {
            return Math.Min(from, Rim);
        }
        if (rest > from)
        {
            var top = Math.Min(Rim, rest);
            return TimeBetween(from, top, inflow) is var rise && rise <= time ? top : Root.Rising(h => TimeBetween(from, h, inflow) - time, from, top);
        }
        return TimeBetween(from, rest, inflow) <= time ? rest : Root.Rising(h => time - TimeBetween(from, h, inflow), rest, from);
    }
}

/// <summary>One cycle of a timed flood.</summary>
/// <param name="Highest">Level when the pump stops, m above the hole.</param>
/// <param name="Lowest">Level when it starts again, m.</param>
/// <param name="ReachesRim">Time from the pump's start to the rim, s; null when it never gets there.</param>
/// <param name="DrainTime">Time in which it would empty from the highest level, s.</param>
/// <param name="ThroughHole">Water through the hole in a cycle, m³.</param>
/// <param name="OverRim">Water over the rim in a cycle, m³.</param>
/// <param name="AboveRim">How high water stands above the rim meanwhile, m; infinite when the overflow cannot take it: the bed floods over.</param>
public sealed record FloodCycle(
    double Highest, double Lowest, double? ReachesRim, double DrainTime, double ThroughHole, double OverRim, double AboveRim);
