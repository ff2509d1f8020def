using CsCheck;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

public class SiphonTests
{
    private const double LitrePerMinute = 0.001 / 60;
    private static readonly double Water20 = WaterProperties.KinematicViscosity(20);

    // 25 mm standpipe of 22 cm in a bed of 110 cm by 70 cm, outlet 60 cm below the floor, two elbows.
    private static readonly SiphonBed Bed = new(0.77, 0.45, 0.22, 0.03, new FullPipe(0.025, 1.2, 0.78 + 2 * 0.9 + 1), 0.6);

    private static readonly Gen<(SiphonBed Bed, double Inflow)> Beds =
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.3, 1], Gen.Double[0.1, 0.35], Gen.Double[0.018, 0.05], Gen.Double[0.2, 1.2], Gen.Double[1.1, 2.8])
            .Select((area, voids, rim, bore, drop, share) =>
            {
                var bed = new SiphonBed(area, voids, rim, 0.03, new FullPipe(bore, 1 + drop, 3.5), drop);
                return (bed, bed.LeastInflow * share);
            });

    [Fact]
    public void The_window_of_25_mm_is_about_the_growers()
    {
        // Common practice, no source: 4 to 15 L/min.
        Assert.InRange(Bed.LeastInflow / LitrePerMinute, 3.5, 5);
        Assert.InRange(Bed.GreatestInflow(Water20) / LitrePerMinute, 13.5, 16.5);
    }

    [Theory]
    [InlineData(3, SiphonVerdict.WillNotStart, SiphonRemedy.MoreFlow)]
    [InlineData(4.8, SiphonVerdict.MayNotStart, SiphonRemedy.MoreFlow)]
    [InlineData(8, SiphonVerdict.Works, null)]
    [InlineData(14, SiphonVerdict.MayNotBreak, SiphonRemedy.LessFlow)]
    [InlineData(20, SiphonVerdict.WillNotBreak, SiphonRemedy.LessFlow)]
    public void It_says_how_a_siphon_behaves_and_what_helps(double litres, SiphonVerdict verdict, SiphonRemedy? first)
    {
        var advice = Bed.Advise(litres * LitrePerMinute, Water20);
        Assert.Equal(verdict, advice.Verdict);
        Assert.Equal(first, advice.Remedies.Count == 0 ? null : advice.Remedies[0]);
        Assert.Equal(verdict is SiphonVerdict.WillNotStart or SiphonVerdict.WillNotBreak, Bed.Cycle(litres * LitrePerMinute, Water20) is null);
    }

    [Fact]
    public void The_bores_that_it_advises_do_work()
    {
        var inflow = 20 * LitrePerMinute;
        var advice = Bed.Advise(inflow, Water20);
        foreach (var bore in new[] { advice.NarrowestBore * 1.0001, advice.WidestBore * 0.9999 })
        {
            var changed = Bed with { Pipe = Bed.Pipe with { Diameter = bore } };
            Assert.Equal(SiphonVerdict.Works, changed.Advise(inflow, Water20).Verdict);
        }
    }

    [Fact]
    public void A_breather_lets_more_through_and_a_flat_drain_less()
    {
        Assert.Equal(SiphonVerdict.Works, (Bed with { Breather = true }).Advise(20 * LitrePerMinute, Water20).Verdict);
        var flat = Bed with { Pipe = new FullPipe(0.025, 4, 8), Drop = 0.02 };
        Assert.True(flat.GreatestInflow(Water20) < Bed.GreatestInflow(Water20));
        Assert.Contains(SiphonRemedy.MoreDrop, flat.Advise(flat.GreatestInflow(Water20) * 1.1, Water20).Remedies);
        var hopeless = Bed with { Pipe = new FullPipe(0.025, 60, 40), Drop = 0 };
        Assert.Equal(SiphonVerdict.NoWindow, hopeless.Advise(8 * LitrePerMinute, Water20).Verdict);
    }

    [Fact]
    [Proof("bed-fill-time", Evidence.Derived, "by hand: 0.77 m², 45 %, 19 cm: 65.8 L, at 480 L/h 8.23 min")]
    public void A_bed_fills_by_hand()
    {
        Assert.Equal(8.23, GravityFormulas.BedFillTime.Compute([0.77, 45, 19, 480]), 0.005);
        Assert.Equal(8.23, Bed.Cycle(8 * LitrePerMinute, Water20)!.Fill / 60, 0.005);
    }

    [Fact]
    public void What_flows_in_flows_out_in_each_cycle() =>
        Beds.Sample(x =>
        {
            if (x.Bed.Cycle(x.Inflow, Water20) is { } cycle)
            {
                var taken = x.Inflow * cycle.Period;
                Assert.Equal(taken, cycle.Spilled + cycle.Dumped, 1e-8 * taken);
                Assert.True(cycle.Highest > x.Bed.Rim && cycle.PeakOutflow > x.Inflow);
            }
        });

    [Fact]
    public void Stepping_through_time_gives_the_same_cycle() =>
        Beds.Sample(x =>
        {
            if (x.Bed.Cycle(x.Inflow, Water20) is not { } cycle)
            {
                return;
            }
            // Fourth-order Runge-Kutta from break to priming and back; the event within a step by straight line.
            var store = x.Bed.Area * x.Bed.Voids;
            double Rise(double level) => (x.Inflow - (level > x.Bed.Rim ? Overflow.Rim(x.Bed.Pipe.Diameter, level - x.Bed.Rim) : 0)) / store;
            double Fall(double level) => (x.Inflow - x.Bed.Outflow(level, Water20)) / store;
            var up = March(Rise, x.Bed.Rim, cycle.Highest, cycle.Spill / 400);
            var down = March(Fall, cycle.Highest, x.Bed.Break, cycle.Drain / 400);
            Assert.Equal(cycle.Spill, up, 2e-4 * cycle.Spill);
            Assert.Equal(cycle.Drain, down, 2e-4 * cycle.Drain);
        }, iter: 15);

    [Fact]
    public void More_flow_shortens_filling_and_lengthens_draining() =>
        Beds.Sample(x =>
        {
            if (x.Bed.Cycle(x.Inflow, Water20) is { } less && x.Bed.Cycle(x.Inflow * 1.1, Water20) is { } more)
            {
                Assert.True(more.Fill < less.Fill);
                Assert.True(more.Drain > less.Drain);
            }
        });

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => (Bed with { Break = 0.3 }).Advise(1e-4, Water20));
        Assert.Throws<ArgumentOutOfRangeException>(() => (Bed with { Voids = 1.2 }).Cycle(1e-4, Water20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Cycle(double.NaN, Water20));
    }

    [Fact]
    public void A_timed_flood_conserves_water_and_drains_before_the_next() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.1, 0.35], Gen.Double[0.004, 0.02], Gen.Double[100, 2000], Gen.Double[60, 1800], Gen.Double[0, 3600])
            .Sample((area, rim, hole, litres, on, off) =>
            {
                var inflow = litres / 3.6e6;
                var flood = new TimedFlood(area, 0.45, rim, 0.045, PipeVelocity.Area(hole), on, off);
                var cycle = flood.Run(inflow);
                Assert.Equal(inflow * on, cycle.ThroughHole + cycle.OverRim, 1e-6 * inflow * on);
                Assert.InRange(cycle.Highest, cycle.Lowest, rim);
                Assert.Equal(cycle.ReachesRim is not null, cycle.Highest >= rim);
                Assert.True(cycle.Lowest > 0 == off < cycle.DrainTime || cycle.Lowest < 1e-9);
            });

    [Fact]
    public void A_timed_flood_by_hand()
    {
        // Derived: no rim reached and nothing left at the start, hole so small that it hardly counts: 100 L into 0.45 m² of voids is 22.2 cm.
        var flood = new TimedFlood(1, 0.45, 0.3, 0.045, 4e-7, 600, 7 * 86400);
        var cycle = flood.Run(100.0 / 600 / 1000);
        Assert.Equal(0.2222, cycle.Highest, 0.001);
        Assert.Null(cycle.ReachesRim);
        // With a hole of 10 mm it empties in the time of a tank.
        var holed = flood with { Hole = PipeVelocity.Area(0.01), Off = 7200 };
        var run = holed.Run(100.0 / 600 / 1000);
        Assert.Equal(Orifice.DrainTime(0.45, PipeVelocity.Area(0.01), run.Highest, 0), run.DrainTime, 1e-6);
        Assert.Equal(0, run.Lowest);
        Assert.True(run.Highest < cycle.Highest);
        // A pump left on settles where the hole passes all of it.
        var steady = (holed with { On = 86400, Off = 0 }).Run(5e-5);
        Assert.Equal(5e-5, Orifice.Flow(PipeVelocity.Area(0.01), steady.Highest), 1e-9);
    }

    [Theory]
    [InlineData(600)]
    [InlineData(200)]
    public void A_timed_flood_stepped_through_time_is_the_same(double litres)
    {
        var flood = new TimedFlood(0.77, 0.45, 0.24, 0.045, PipeVelocity.Area(0.008), 700, 1500);
        var inflow = litres / 3.6e6;
        var cycle = flood.Run(inflow);
        var (level, over, hole) = (cycle.Lowest, 0.0, 0.0);
        double? atRim = null;
        const int steps = 200_000;
        for (var i = 0; i < steps; i++)
        {
            hole += Orifice.Flow(flood.Hole, level) * flood.On / steps;
            level += (inflow - Orifice.Flow(flood.Hole, level)) / (flood.Area * flood.Voids) * flood.On / steps;
            if (level > flood.Rim)
            {
                atRim ??= i * flood.On / steps;
                over += (level - flood.Rim) * flood.Area * flood.Voids;
                level = flood.Rim;
            }
        }
        Assert.Equal(level, cycle.Highest, 1e-5);
        Assert.Equal(atRim is null, cycle.ReachesRim is null);
        Assert.Equal(atRim ?? 0, cycle.ReachesRim ?? 0, 0.1);
        Assert.Equal(over, cycle.OverRim, 1e-5);
        for (var i = 0; i < steps; i++)
        {
            hole += Orifice.Flow(flood.Hole, level) * flood.Off / steps;
            level = Math.Max(0, level - Orifice.Flow(flood.Hole, level) / (flood.Area * flood.Voids) * flood.Off / steps);
        }
        Assert.Equal(level, cycle.Lowest, 1e-5);
        Assert.Equal(hole, cycle.ThroughHole, 1e-5);
    }

    private static double March(Func<double, double> rate, double from, double to, double step)
    {
        var (level, time) = (from, 0.0);
        while (true)
        {
            var a = rate(level);
            var b = rate(level + step / 2 * a);
            var c = rate(level + step / 2 * b);
            var d = rate(level + step * c);
            var next = level + step / 6 * (a + 2 * b + 2 * c + d);
            if ((next - to) * (from - to) <= 0)
            {
                return time + step * (to - level) / (next - level);
            }
            (level, time) = (next, time + step);
        }
    }
}
