using Runnel.Engine.Numerics;

namespace Runnel.Engine.Flow;

/// <summary>A bed that fills steadily and empties itself through a bell or loop siphon.</summary>
/// <param name="Area">Inside area of the bed, m², above 0 to 10 000.</param>
/// <param name="Voids">Share of the bed's volume that water can fill, from 0.05 to 1: about 0.4 to 0.5 with media.</param>
/// <param name="Rim">Height of the standpipe's rim (or the loop's crest) above the floor, m, above 0 to 3.</param>
/// <param name="Break">Height at which air gets under the bell, m, from 0 to below the rim.</param>
/// <param name="Pipe">Standpipe and drain behind it, one size, with its losses: entrance under the bell, elbows, and 1 for the exit.</param>
/// <param name="Drop">Height of the bed's floor above the outlet (above the water, where that covers it), m, from 0 to 50.</param>
/// <param name="Breather">True if a tube lets air into the top of the bell once the water has fallen to the break.</param>
/// <remarks>
/// A bell that works on paper may not in the bed: pebbles, roots and slime move both ends of its window. Try it with water before planting,
/// and give the bed an overflow above the rim that carries the whole pump.
/// </remarks>
public sealed record SiphonBed(double Area, double Voids, double Rim, double Break, FullPipe Pipe, double Drop, bool Breather = false)
{
    internal const double MinVoids = 0.05;
    internal const double MaxArea = 10000;
    internal const double MaxRim = 3;

    /// <summary>How far from either end of its window a siphon can be trusted. Common practice, no source: a quarter.</summary>
    public const double Margin = 1.25;

    /// <summary>Least inflow at which the siphon can start, m³/s.</summary>
    /// <remarks>Below a Froude number of 0.3 in the standpipe air escapes against the falling water, which trickles down the wall for ever. Source:
    /// Hills 1983 (see <see cref="PipeFroude"/>); that it holds under a bell is our inference, borne out by the window of the trade:
    /// 4 to 15 L/min in 25 mm (common practice, no source).</remarks>
    public double LeastInflow => PipeFroude.Flow(PipeFroude.SelfVenting, Pipe.Diameter);

    /// <summary>Flow through the siphon, full, with the water at a level, m³/s.</summary>
    /// <param name="level">Height of the water above the floor, m.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public double Outflow(double level, double viscosity) =>
        Pipe.FlowUnder(Range.Within(level, 0, MaxRim + Overflow.MaxHead) + Range.Within(Drop, 0, GravityDrain.MaxDrop), viscosity);

    /// <summary>Greatest inflow at which the siphon still breaks, m³/s.</summary>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <remarks>At the break it must draw more than flows in, or the water never falls to it; and the inflow alone must not sweep the air down
    /// that has got in, which it does from a Froude number of 1 on (Hills 1983; our inference as above), unless a breather brings
    /// air to the top faster.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public double GreatestInflow(double viscosity)
    {
        var atBreak = Outflow(Break, viscosity);
        return Breather ? atBreak : Math.Min(atBreak, PipeFroude.Flow(PipeFroude.Sweeping, Pipe.Diameter));
    }

    /// <summary>How the siphon behaves at an inflow, and what would change that.</summary>
    /// <param name="inflow">Inflow, m³/s, from 0 to 2.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public SiphonAdvice Advise(double inflow, double viscosity)
    {
        Check(inflow);
        var (least, greatest) = (LeastInflow, GreatestInflow(viscosity));
        var verdict =
            least >= greatest ? SiphonVerdict.NoWindow
            : inflow < least ? SiphonVerdict.WillNotStart
            : inflow > greatest ? SiphonVerdict.WillNotBreak
            : inflow < least * Margin ? SiphonVerdict.MayNotStart
            : inflow > greatest / Margin ? SiphonVerdict.MayNotBreak
            : SiphonVerdict.Works;
        var outflowRules = Outflow(Break, viscosity) <= PipeFroude.Flow(PipeFroude.Sweeping, Pipe.Diameter);
        IReadOnlyList<SiphonRemedy> remedies = verdict switch
        {
            SiphonVerdict.WillNotStart or SiphonVerdict.MayNotStart =>
                [SiphonRemedy.MoreFlow, SiphonRemedy.NarrowerStandpipe, SiphonRemedy.BendAtTheOutlet],
            SiphonVerdict.WillNotBreak or SiphonVerdict.MayNotBreak when outflowRules =>
                [SiphonRemedy.LessFlow, SiphonRemedy.MoreDrop, SiphonRemedy.FewerElbows, SiphonRemedy.WiderPipe],
            SiphonVerdict.WillNotBreak or SiphonVerdict.MayNotBreak =>
                [SiphonRemedy.LessFlow, SiphonRemedy.Breather, SiphonRemedy.WiderPipe],
            SiphonVerdict.NoWindow => [SiphonRemedy.MoreDrop, SiphonRemedy.FewerElbows, SiphonRemedy.NarrowerStandpipe],
            _ => [],
        };
        // Bore for which the inflow lies at the window's lower end, with the margin.
        var widest = inflow <= 0 ? 0 : Math.Pow(inflow / (Margin * PipeFroude.SelfVenting * Math.PI / 4 * Math.Sqrt(WaterProperties.Gravity)), 0.4);
        var narrowest = inflow <= 0 ? 0 : Math.Pow(inflow * Margin / (PipeFroude.Sweeping * Math.PI / 4 * Math.Sqrt(WaterProperties.Gravity)), 0.4);
        return new(verdict, least, greatest, remedies, narrowest, widest);
    }

    /// <summary>One cycle at a steady inflow, from break to break.</summary>
    /// <param name="inflow">Inflow, m³/s, from 0 to 2.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s.</param>
    /// <returns>The cycle; null when there is none because the siphon does not start or does not break.</returns>
    /// <remarks>
    /// Times are integrals over the level, so each event falls where it falls and not at a step: filling S (rim − break)/Q; spilling over the
    /// rim, ∫ S dh/(Q − Q_rim), until the rim passes <see cref="LeastInflow"/>; draining ∫ S dh/(Q_siphon − Q); S area times voids. The
    /// siphon is taken to run full at once. Not for: media so fine that water lags in it.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Something lies outside its range, or is not a number.</exception>
    public SiphonCycle? Cycle(double inflow, double viscosity)
    {
        Check(inflow);
        if (inflow <= LeastInflow || inflow > GreatestInflow(viscosity))
        {
            return null;
        }
        var store = Area * Voids;
        var primed = Rim + Overflow.HeadFor(Pipe.Diameter, LeastInflow);
        var least = Outflow(Break, viscosity);
        if (least <= inflow * (1 + 1e-9))
        {
            return null;
        }
        double Spill(double level) => Overflow.Rim(Pipe.Diameter, level - Rim);
        var fill = store * (Rim - Break) / inflow;
        var spill = Quadrature.Integrate(h => store / (inflow - Spill(h)), Rim, primed);
        var spilled = Quadrature.Integrate(h => store * Spill(h) / (inflow - Spill(h)), Rim, primed);
        var drain = Quadrature.Integrate(h => store / (Outflow(h, viscosity) - inflow), Break, primed);
        var dumped = Quadrature.Integrate(h => Excess(h) * store, Break, primed);
        return new(fill, spill, drain, spilled, dumped, Outflow(primed, viscosity), store * (primed - Break), primed);

        double Excess(double level)
        {
            var outflow = Outflow(level, viscosity);
            return outflow / (outflow - inflow);
        }
    }

    private void Check(double inflow)
    {
        Range.Within(inflow, 0, Limits.MaxFlow);
        Range.Within(Area, 1e-6, MaxArea);
        Range.Within(Voids, MinVoids, 1);
        Range.Within(Rim, 1e-3, MaxRim);
        Range.Within(Break, 0, Rim * (1 - 1e-9));
    }
}

/// <summary>One cycle of a siphon bed.</summary>
/// <param name="Fill">Time in which it fills from break to rim, s.</param>
/// <param name="Spill">Time in which it spills over the rim until the siphon starts, s.</param>
/// <param name="Drain">Time in which it drains, s.</param>
/// <param name="Spilled">Water that spills over the rim meanwhile, m³.</param>
/// <param name="Dumped">Water that the siphon passes while it drains, m³.</param>
/// <param name="PeakOutflow">Greatest flow through the siphon, m³/s: what the drain behind it and the vessel below must take.</param>
/// <param name="Swing">Water by which the bed's content rises and falls, m³: by so much the vessel that feeds it falls and rises.</param>
/// <param name="Highest">Highest level, m above the floor.</param>
public sealed record SiphonCycle(
    double Fill, double Spill, double Drain, double Spilled, double Dumped, double PeakOutflow, double Swing, double Highest)
{
    /// <summary>Time from break to break, s.</summary>
    public double Period => Fill + Spill + Drain;
}

/// <summary>How a siphon behaves and what to do about it.</summary>
/// <param name="Verdict">How it behaves.</param>
/// <param name="Least">Least inflow at which it can start, m³/s.</param>
/// <param name="Greatest">Greatest inflow at which it still breaks, m³/s.</param>
/// <param name="Remedies">What would help, easiest first.</param>
/// <param name="NarrowestBore">Bore, m, below which this inflow is too much for the air, margin included; moot with a breather.</param>
/// <param name="WidestBore">Bore, m, above which this inflow trickles, margin included.</param>
public sealed record SiphonAdvice(
    SiphonVerdict Verdict, double Least, double Greatest, IReadOnlyList<SiphonRemedy> Remedies, double NarrowestBore, double WidestBore);

/// <summary>How a siphon behaves at an inflow.</summary>
public enum SiphonVerdict
{
    /// <summary>Starts and breaks.</summary>
    Works,

    /// <summary>So near the lower end that slime or a weary pump stop it.</summary>
    MayNotStart,

    /// <summary>Trickles over the rim for ever.</summary>
    WillNotStart,

    /// <summary>So near the upper end that it may run on.</summary>
    MayNotBreak,

    /// <summary>Runs on for ever at a low level.</summary>
    WillNotBreak,

    /// <summary>No inflow both starts and breaks it.</summary>
    NoWindow,
}

/// <summary>A change to a siphon.</summary>
public enum SiphonRemedy
{
    /// <summary>Open the valve, or feed fewer beds at once.</summary>
    MoreFlow,

    /// <summary>Throttle the valve.</summary>
    LessFlow,

    /// <summary>A narrower standpipe.</summary>
    NarrowerStandpipe,

    /// <summary>A wider standpipe and drain.</summary>
    WiderPipe,

    /// <summary>An elbow at the end of the drain, which holds water back and keeps air out.</summary>
    BendAtTheOutlet,

    /// <summary>A tube that lets air into the top of the bell.</summary>
    Breather,

    /// <summary>A lower outlet, or a higher bed.</summary>
    MoreDrop,

    /// <summary>A straighter drain.</summary>
    FewerElbows,
}
