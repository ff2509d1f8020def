using Runnel.Engine.Levels;

namespace Runnel.Engine.Tests.Levels;

/// <summary>Cases worked out by hand: every number below is derived from areas and depths, none from a run.</summary>
public sealed class LevelTests
{
    private const double Near = 1e-9;

    private static LevelCase Case(WaterLoop loop, LevelCaseKind kind, string? of = null) =>
        LevelSolver.Solve(loop).Single(c => c.Kind == kind && (of is null || c.Of == of));

    [Fact]
    public void A_running_loop_stands_as_it_was_filled()
    {
        var running = Case(LoopSamples.Beds(), LevelCaseKind.Running);

        Assert.Equal([0.2, 0.2, 0.2], running.Vessels.Select(v => Math.Round(v.Level, 9)));
        Assert.Equal(0, running.OnFloor);
        Assert.Empty(running.RanDry);
        Assert.Equal(0.005, running.InPipes, Near);
    }

    // 200 L in the sump + 2 × 100 L of beds + 5 L of pipe in 1 m²: 40.5 cm.
    [Fact]
    public void With_the_power_off_beds_and_pipe_run_back_into_the_sump()
    {
        var off = Case(LoopSamples.Beds(), LevelCaseKind.Off);

        Assert.Equal(0.405, off.Vessels[0].Level, Near);
        Assert.Equal(0.095, off.Vessels[0].Free, Near);
        Assert.Equal(0, off.Vessels[1].Volume, Near);
        Assert.Equal(0, off.OnFloor, Near);
    }

    // The same into a sump of 30 cm: 405 − 300 L on the floor.
    [Fact]
    public void A_sump_too_small_spills_what_it_cannot_hold()
    {
        var off = Case(LoopSamples.Beds(sumpHeight: 0.3), LevelCaseKind.Off);

        Assert.Equal(0.105, off.Vessels[0].Spilled, Near);
        Assert.Equal(0, off.Vessels[0].Free, Near);
    }

    // 200 + 2 × 100 L while the pipe stays full.
    [Fact]
    public void Siphons_that_empty_together_fill_the_sump()
    {
        var dump = Case(LoopSamples.Beds(sumpHeight: 0.35), LevelCaseKind.Dump);

        Assert.Equal(0.05, dump.Vessels[0].Spilled, Near);
        Assert.Equal(0.05, dump.Vessels[0].PeakSpilled, Near);
    }

    // 80 L of water for 2 × 100 L of beds: with 50 L that the pump cannot take, 75 L go to each.
    [Fact]
    public void A_pump_that_cannot_fill_its_beds_runs_dry()
    {
        var running = Case(LoopSamples.Beds(sumpWater: 0.2) with { Filled = [0.2, 0, 0] }, LevelCaseKind.Running);

        Assert.Equal(["pump"], running.RanDry);
        Assert.Equal(0.05, running.Vessels[0].Level, Near);
        Assert.Equal([0.075, 0.075], running.Vessels.Skip(1).Select(v => Math.Round(v.Volume, 9)));
    }

    // Bed two empties and takes no part; all over 5 cm in the sump, 200 + 100 − 50 L, ends in bed one, which holds 100 L of its own and
    // 50 L more to the rim.
    [Fact]
    public void A_blocked_bed_spills_what_the_pump_can_take()
    {
        var blocked = Case(LoopSamples.Beds(), LevelCaseKind.Blocked, "bed one");

        Assert.Equal(0.2, blocked.Vessels[1].Spilled, Near);
        Assert.Equal(0.3, blocked.Vessels[1].Level, Near);
        Assert.Equal(0.05, blocked.Vessels[0].Level, Near);
        Assert.Equal(["pump"], blocked.RanDry);
    }

    [Fact]
    public void A_second_way_out_prevents_it()
    {
        var loop = LoopSamples.Beds();
        var blocked = Case(loop with { Outlets = [.. loop.Outlets, new(1, [0], 0.25, 0.02)] }, LevelCaseKind.Blocked, "bed one");

        Assert.Equal(0, blocked.OnFloor, Near);
        Assert.Equal(0.27, blocked.Vessels[1].Level, Near);
    }

    // One bed of two alike: the blocked one holds 100 L of its own and 50 L more, the other's 100 L empty into the sump.
    [Fact]
    public void Of_two_alike_one_is_blocked()
    {
        var loop = LoopSamples.Beds();
        var twin = loop with
        {
            Basins = [loop.Basins[0], loop.Basins[1] with { Count = 2 }],
            Filled = [0.2, 0.2],
            Outlets = [loop.Outlets[0]],
            Lifts = [loop.Lifts[0] with { To = [1] }],
        };
        var blocked = Case(twin, LevelCaseKind.Blocked);

        Assert.Equal(0.2, blocked.OnFloor, Near);
        Assert.Equal(0.3, blocked.Vessels[1].Level, Near);
    }

    // Over 5 cm in the sump, both beds, and the pipe: 150 + 200 + 5 L.
    [Fact]
    public void A_broken_line_puts_the_sump_on_the_floor()
    {
        var broken = Case(LoopSamples.Beds(), LevelCaseKind.Broken);

        Assert.Equal(0.355, broken.FromLine, Near);
        Assert.Equal(0.05, broken.Vessels[0].Level, Near);
    }

    // 2 cm over the mouth on 1 m² = 20 L, 5 L of pipes: 15 + 2.5 cm / 0.5 m² … 175 L on 0.5 m² = 35 cm.
    [Fact]
    public void Water_over_the_mouth_drains_back()
    {
        var off = Case(LoopSamples.Tank(), LevelCaseKind.Off);

        Assert.Equal(0.80, off.Vessels[0].Level, Near);
        Assert.Equal(0.35, off.Vessels[1].Level, Near);
    }

    // The sump takes 300 L to its rim at 60 cm; the tank's bottom stands at 20 cm: the tank falls until its surface, too, is level with that
    // rim, 40 cm deep. It held 800 L at rest: 400 L leave it, 125 L of them fit, 275 L spill.
    [Fact]
    public void An_end_under_water_siphons_the_tank_onto_the_floor()
    {
        var off = Case(LoopSamples.Tank(underWater: true), LevelCaseKind.Off);

        Assert.Equal(0.40, off.Vessels[0].Level, 1e-6);
        Assert.Equal(0.275, off.Vessels[1].Spilled, 1e-6);
    }

    [Fact]
    public void A_check_valve_holds_it()
    {
        var off = Case(LoopSamples.Tank(underWater: true, valve: true), LevelCaseKind.Off);

        Assert.Equal(0.80, off.Vessels[0].Level, Near);
        Assert.Equal(0.003, off.InPipes, Near);
    }

    // The sump's 150 − 50 L go into 18 cm of free height on 1 m², 180 L: nothing spills, and the sump is at its lowest.
    [Fact]
    public void A_tank_with_room_takes_all_that_a_small_sump_gives()
    {
        var blocked = Case(LoopSamples.Tank(), LevelCaseKind.Blocked, "tank");

        Assert.Equal(0, blocked.OnFloor, Near);
        Assert.Equal(0.92, blocked.Vessels[0].Level, Near);
        Assert.Equal(["pump"], blocked.RanDry);
    }

    // Pump in a fish tank of 1 m² filled to 60 cm, a raft bed above it: a broken line leaves 5 cm.
    [Fact]
    public void A_pump_in_the_fish_tank_leaves_the_fish_nothing()
    {
        var loop = new WaterLoop
        {
            Basins = [Basin.Straight("fish tank", 1, 0.8), Basin.Straight("raft", 2, 0.3, 0.9)],
            Filled = [0.6, 0.4],
            Outlets = [new(1, [0], 0.18, 0.02)],
            Lifts = [new("pump", 0, [1], 0.05)],
        };
        var broken = Case(loop, LevelCaseKind.Broken);

        Assert.Equal(0.05, broken.Vessels[0].Level, Near);
        Assert.Equal(0.55 + 2 * 0.02, broken.FromLine, Near);
    }

    // A drain at 10 cm joins 1 m² and 3 m² that stand on one floor: 400 L over both stand 10 cm deep, 1200 L 30 cm.
    [Theory]
    [InlineData(0.4, 0.10)]
    [InlineData(1.2, 0.30)]
    public void Vessels_joined_above_their_drain_share_one_level(double water, double level)
    {
        var loop = new WaterLoop
        {
            Basins = [Basin.Straight("a", 1, 1), Basin.Straight("b", 3, 1)],
            Filled = [Math.Min(1, water), Math.Max(0, water - 1)],
            Outlets = [new(0, [1], 0.1)],
        };
        var rest = Case(loop, LevelCaseKind.Rest);

        Assert.Equal(level, rest.Vessels[0].Level, 1e-6);
        Assert.Equal(level, rest.Vessels[1].Level, 1e-6);
    }

    // Three in a row, 1 m² each with mouths at 50 cm; the last blocked with a rim of 60 cm: the water backs up and all stand at 60 cm.
    [Fact]
    public void A_blocked_drain_backs_up_into_the_vessels_before_it()
    {
        var loop = new WaterLoop
        {
            Basins = [Basin.Straight("sump", 1, 1), Basin.Straight("one", 1, 0.9), Basin.Straight("two", 1, 0.9), Basin.Straight("three", 1, 0.6)],
            Filled = [0.9, 0.5, 0.5, 0.5],
            Outlets = [new(1, [2], 0.5), new(2, [3], 0.5), new(3, [0], 0.5)],
            Lifts = [new("pump", 0, [1], 0.1)],
        };
        var blocked = Case(loop, LevelCaseKind.Blocked, "three");

        Assert.All(blocked.Vessels.Skip(1), v => Assert.Equal(0.6, v.Level, 1e-6));
        Assert.Equal(0.9 - 0.1 - 0.3, blocked.Vessels[3].Spilled, 1e-6);
    }

    // Water that comes in and has no way out is lost to the last litre that the pump can take.
    [Fact]
    public void A_vessel_without_a_drain_floods()
    {
        var loop = LoopSamples.Beds();
        var running = Case(loop with { Outlets = [loop.Outlets[0]] }, LevelCaseKind.Running);

        Assert.Equal(["pump"], running.RanDry);
        Assert.Equal(0.2 - 0.05 - 0.05, running.Vessels[2].Spilled, 1e-9);
    }

    // Two pumps in a row are taken to keep step.
    [Fact]
    public void Two_pumps_in_a_row_keep_step()
    {
        var loop = new WaterLoop
        {
            Basins = [Basin.Straight("tank", 1, 1, 0.1), Basin.Straight("bed", 1, 0.3, 1.2), Basin.Straight("sump", 1, 0.5)],
            Filled = [0.6, 0.22, 0.2],
            Outlets = [new(1, [2], 0.2, 0.02)],
            Lifts = [new("up", 0, [1], 0.05), new("back", 2, [0], 0.05)],
        };

        Assert.Equal([0.6, 0.22, 0.2], Case(loop, LevelCaseKind.Running).Vessels.Select(v => Math.Round(v.Level, 6)));
        // The line back broken: tank, bed's surplus and sump all go, down to what the pumps leave.
        var broken = Case(loop, LevelCaseKind.Broken, "back");
        Assert.Equal(0.55 + 0.15, broken.FromLine, 1e-9);
    }

    [Fact]
    public void A_loop_that_names_a_vessel_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => LevelSolver.Solve(LoopSamples.Beds() with { Outlets = [new(1, [9], 0.2)] }));
}
