using CsCheck;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

public class GravityTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private static readonly double Water20 = WaterProperties.KinematicViscosity(20);

    [Fact]
    [Proof("drain-time", Evidence.Published, "engineeringprep.com 435: tank of 4 ft, nozzle of 5 in², 6 ft to 2 ft, Cd 1: 94 s printed (93.38 exactly): 0.7 s")]
    [Proof("orifice-flow", Evidence.Derived, "its drain time is the published one")]
    public void A_published_tank_empties()
    {
        var tank = Math.PI / 4 * 16 * Foot * Foot;
        Assert.Equal(94, Orifice.DrainTime(tank, 5 * Inch * Inch, 6 * Foot, 2 * Foot, 1), 0.7);
        Assert.Equal(93.38, Orifice.DrainTime(tank, 5 * Inch * Inch, 6 * Foot, 2 * Foot, 1), 0.05);
    }

    [Fact]
    [Proof("drain-time", Evidence.Published, "a published exercise: 1 m², hole of 0.01 m², 2 m, Cd 0.62: 103 s")]
    public void A_second_published_tank_empties() => Assert.Equal(103, Orifice.DrainTime(1, 0.01, 2, 0, 0.62), 0.5);

    [Fact]
    [Proof("drain-time", Evidence.Derived, "a fall in two parts takes the sum of their times; stepped forward by Heun's method, the same: 0.1 %")]
    public void Drain_times_add_up() =>
        Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.01, 0.05], Gen.Double[0.2, 1]).Sample((tank, hole, high) =>
        {
            var area = PipeVelocity.Area(hole);
            var whole = Orifice.DrainTime(tank, area, high, 0.1 * high);
            Assert.Equal(whole, Orifice.DrainTime(tank, area, high, high / 2) + Orifice.DrainTime(tank, area, high / 2, 0.1 * high), 1e-9 * whole);
            var level = high;
            for (var i = 0; i < 1000; i++)
            {
                var first = Orifice.Flow(area, level) / tank;
                var second = Orifice.Flow(area, level - first * whole / 1000) / tank;
                level -= (first + second) / 2 * whole / 1000;
            }
            Assert.Equal(0.1 * high, level, 1e-3 * high);
        }, iter: 30);

    [Theory]
    [InlineData(20, 0.10, 950)]
    [InlineData(25, 0.30, 2572)]
    [InlineData(40, 0.10, 3801)]
    [InlineData(50, 0.30, 10288)]
    [Proof("orifice-flow", Evidence.Derived, "worked by hand with Cd 0.60: 0.1 %")]
    public void Orifice_flows_by_hand(double millimetres, double head, double litres) =>
        Assert.Equal(litres, GravityFormulas.Orifice.Compute([millimetres, head, 0.6]), 1e-3 * litres);

    [Theory]
    [InlineData(1, 10, 533)]
    [InlineData(1, 30, 924)]
    [InlineData(1.5, 10, 851)]
    [InlineData(1.5, 20, 1777)]
    [InlineData(2, 10, 1093)]
    [InlineData(2, 20, 2929)]
    [InlineData(3, 10, 1622)]
    [InlineData(3, 20, 4587)]
    [InlineData(3, 30, 7902)]
    [InlineData(4, 20, 6019)]
    [InlineData(4, 30, 11058)]
    [Proof("overflow-flow", Evidence.Derived, "standpipes of schedule 40 worked by hand, weir 1.84 or hole 0.6 whichever is less: 0.2 %")]
    public void Standpipes_by_hand(double inches, double millimetres, double litres) =>
        Assert.Equal(litres, Overflow.Rim(InsideDiameter.Schedule40FromMinimumWall(inches), millimetres / 1000) * 3.6e6, 2e-3 * litres);

    [Fact]
    [Proof("overflow-flow", Evidence.Published, "weir coefficient of stormwater manuals, 2.8 to 3.33 in feet: ours lies at the upper end")]
    public void The_weir_coefficient_is_the_manuals_upper_end() =>
        Assert.InRange(Overflow.WeirCoefficient, 2.8 * Math.Sqrt(Foot), 3.335 * Math.Sqrt(Foot));

    [Fact]
    [Proof("overflow-flow", Evidence.Derived, "weir and hole cross near 0.36 D; never falls as water rises; head and flow undo each other")]
    public void A_rim_turns_from_weir_to_hole()
    {
        var crossing = Math.Sqrt(2 * WaterProperties.Gravity) * 0.6 / 4 / Overflow.WeirCoefficient;
        Assert.Equal(0.36, crossing, 0.005);
        Gen.Select(Gen.Double[0.01, 0.2], Gen.Double[0, 0.2], Gen.Double[0, 0.05]).Sample((bore, head, more) =>
        {
            var flow = Overflow.Rim(bore, head);
            Assert.True(Overflow.Rim(bore, head + more) >= flow);
            Assert.Equal(head, Overflow.HeadFor(bore, flow), 1e-9);
        });
    }

    [Fact]
    [Proof("part-full-pipe", Evidence.Published, "Cengel and Cimbala, as quoted by C. Bell, fluids: R 0.2859 m, S 0.005236, n 0.03: 1.04678 m/s, here as a full pipe of 4 R: 0.01 %")]
    public void Cengels_velocity()
    {
        var bore = 4 * 0.2859;
        Assert.Equal(1.04678, Manning.Flow(bore, 1, 0.005236, 0.03) / PipeVelocity.Area(bore), 1e-4);
    }

    [Fact]
    [Proof("part-full-pipe", Evidence.Published, "Maurer, R package hydraulics, vignette: 0.01 m³/s, n 0.013, S 0.001, 0.2 m: y 0.16 m, A 0.027, P 0.44: printed rounding")]
    public void Maurers_drain()
    {
        var depth = Manning.Depth(0.01, 0.2, 0.001, 0.013)!.Value;
        Assert.Equal(0.16, 0.2 * depth, 0.005);
        var (area, perimeter) = Manning.Section(0.2, depth);
        Assert.Equal(0.027, area, 0.0005);
        Assert.Equal(0.44, perimeter, 0.005);
        Assert.Equal(0.01, Manning.Flow(0.2, depth, 0.001, 0.013), 1e-12);
    }

    [Theory]
    [InlineData(1, 2.00, 1.00)]
    [InlineData(0.25, 0.274, 0.701)]
    [InlineData(0.75, 1.82, 1.13)]
    [Proof("part-full-pipe", Evidence.Published, "National Standard Plumbing Code 2009, appendix K: flow and velocity against half full: 0.5 %")]
    public void The_codes_multipliers(double depth, double flow, double velocity)
    {
        var half = Manning.Flow(0.05, 0.5, 0.01);
        var ratio = Manning.Flow(0.05, depth, 0.01) / half;
        Assert.Equal(flow, ratio, 0.005 * flow);
        Assert.Equal(velocity, ratio / (Manning.Section(0.05, depth).Area / Manning.Section(0.05, 0.5).Area), 0.005);
    }

    [Fact]
    [Proof("part-full-pipe", Evidence.Derived, "Mott example 14.2, worked by hand: 0.2 m half full, S 0.001, n 0.013: 5.186e-3 m³/s (5.18e-3 printed, from memory)")]
    [Proof("part-full-pipe", Evidence.Published, "civiltoolbox: 8 in full, n 0.013, S 0.005: 0.854 ft³/s printed from a rounded radius (0.857 exactly): 0.5 %")]
    public void Two_more_drains()
    {
        Assert.Equal(5.186e-3, Manning.Flow(0.2, 0.5, 0.001, 0.013), 5e-6);
        Assert.Equal(0.854, Manning.Flow(8 * Inch, 1, 0.005, 0.013) / (Foot * Foot * Foot), 0.005 * 0.854);
    }

    [Fact]
    [Proof("part-full-pipe", Evidence.Derived, "carries most at 0.94 of its diameter, 7.6 % more than full; deeper carries more until then; no depth for more than that")]
    public void A_round_drain_carries_most_when_not_quite_full()
    {
        var most = Manning.Flow(0.05, Manning.FullestDepth, 0.01);
        Assert.Equal(1.076, most / Manning.Flow(0.05, 1, 0.01), 0.001);
        Assert.True(most >= Manning.Flow(0.05, Manning.FullestDepth - 0.003, 0.01) && most >= Manning.Flow(0.05, Manning.FullestDepth + 0.003, 0.01));
        Assert.Null(Manning.Depth(most * 1.001, 0.05, 0.01));
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[0, 0.03]).Sample((depth, more) =>
            Assert.True(Manning.Flow(0.05, depth + more, 0.01) >= Manning.Flow(0.05, depth, 0.01)));
    }

    [Fact]
    [Proof("pipe-froude", Evidence.Published, "a public worked example of Hills' method: 36 m³/h in 180 mm: 0.296")]
    public void Hills_example() => Assert.Equal(0.296, GravityFormulas.PipeFroude.Compute([36000, 180]), 0.0005);

    [Theory]
    [InlineData(0.26, 4)]
    [InlineData(1.06, 15)]
    [Proof("siphon-least-inflow", Evidence.CommonPractice, "siphons of 25 mm are said to work from 4 to 15 L/min: Froude 0.27 to 1.03, the limits of Hills, 0.3 and 1, within a tenth")]
    [Proof("siphon-least-inflow", Evidence.Derived, "undone by the Froude number of the same flow")]
    public void Hills_limits_are_the_growers_window(double froude, double litres)
    {
        var bore = 0.025;
        Assert.Equal(froude, PipeFroude.Of(litres / 60000, bore), 0.04);
        Assert.Equal(0.3, PipeFroude.Of(PipeFroude.Flow(0.3, bore), bore), 12);
    }

    [Fact]
    public void A_drain_is_held_back_by_its_rim_its_mouth_or_its_pipe()
    {
        var wide = new GravityDrain(0.045, new FullPipe(0.045, 1.4, 3.3), 0.4);
        Assert.Equal(DrainLimit.Rim, wide.LimitAt(0.005, Water20));
        Assert.Equal(DrainLimit.DrownedMouth, wide.LimitAt(0.05, Water20));
        var flat = new GravityDrain(0.045, new FullPipe(0.020, 6, 5), 0.05);
        Assert.Equal(DrainLimit.Pipe, flat.LimitAt(0.03, Water20));
        Assert.True(wide.IsQuiet(500 / 3.6e6));
        Assert.False(wide.IsQuiet(2500 / 3.6e6));
    }

    [Fact]
    public void A_drains_head_and_capacity_undo_each_other_and_a_blocked_one_says_so()
    {
        Gen.Select(Gen.Double[0.001, 0.2], Gen.Double[0.02, 0.1], Gen.Double[0, 1], Gen.Double[0, 5]).Sample((head, bore, drop, length) =>
        {
            var drain = new GravityDrain(bore, new FullPipe(bore, length, 2.5), drop);
            var flow = drain.Capacity(head, Water20);
            Assert.Equal(flow, drain.Capacity(drain.HeadFor(flow, Water20), Water20), 1e-6 * flow);
        });
        Assert.Equal(double.PositiveInfinity, new GravityDrain(0.01, new FullPipe(0.01, 10, 5), 0).HeadFor(1e-2, Water20));
    }
}
