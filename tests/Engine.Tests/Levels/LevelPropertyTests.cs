using CsCheck;
using Runnel.Engine.Levels;
using Runnel.Engine.Volumes;

namespace Runnel.Engine.Tests.Levels;

/// <summary>What holds for every loop, whatever its shapes, drains and pumps.</summary>
public sealed class LevelPropertyTests
{
    [Fact]
    public void No_water_is_made_or_lost() => LoopSamples.Any.Sample(loop =>
    {
        var cases = LevelSolver.Solve(loop);
        var total = cases.Single(c => c.Kind == LevelCaseKind.Running).Total;
        foreach (var one in cases)
        {
            Assert.Equal(total, one.Total, 1e-9 * total + 1e-15);
        }
    }, iter: 20000);

    [Fact]
    public void Every_level_lies_in_its_vessel() => LoopSamples.Any.Sample(loop =>
    {
        foreach (var (one, vessel, basin) in LevelSolver.Solve(loop).SelectMany(c => c.Vessels.Select((v, i) => (c, v, loop.Basins[i]))))
        {
            Assert.InRange(vessel.Level, 0, basin.Height + 1e-9);
            Assert.InRange(vessel.Volume, -1e-12, basin.Capacity * (1 + 1e-9));
            Assert.Equal(basin.Height - vessel.Level, vessel.Free, 1e-9);
            Assert.True(vessel.Spilled >= 0 && vessel.Peak >= vessel.Level && one.FromLine >= 0);
        }
    }, iter: 5000);

    // Nothing stands above an open mouth unless the vessel below stands as high.
    [Fact]
    public void At_rest_no_water_can_run_any_further() => LoopSamples.Any.Sample(loop =>
    {
        var rest = LevelSolver.Solve(loop).Single(c => c.Kind == LevelCaseKind.Rest);
        foreach (var outlet in loop.Outlets)
        {
            foreach (var to in outlet.To.Where(t => t != outlet.From))
            {
                double Surface(int i) => loop.Basins[i].Bottom + rest.Vessels[i].Level;
                var weir = Math.Max(loop.Basins[outlet.From].Bottom + (outlet.Kind == OutletKind.Overflow ? outlet.Mouth : 0), loop.Basins[to].Bottom);
                var (a, b) = (rest.Vessels[outlet.From].Volume > 1e-12 ? Surface(outlet.From) : 0, rest.Vessels[to].Volume > 1e-12 ? Surface(to) : 0);
                Assert.True(Math.Max(a, b) <= weir + 1e-6 || Math.Abs(a - b) < 1e-6, $"{a} and {b} over {weir}");
            }
        }
    }, iter: 5000);

    [Fact]
    public void Without_a_pump_running_is_rest() => LoopSamples.Any.Sample(loop =>
    {
        var cases = LevelSolver.Solve(loop with { Lifts = [] });
        var (rest, running) = (cases.Single(c => c.Kind == LevelCaseKind.Rest), cases.Single(c => c.Kind == LevelCaseKind.Running));
        Assert.All(rest.Vessels.Zip(running.Vessels), p => Assert.Equal(p.First.Level, p.Second.Level, 1e-8));
        Assert.Equal(rest.OnFloor, running.OnFloor, 1e-9);
        Assert.Equal(2, cases.Count);
    }, iter: 2000);

    [Fact]
    public void A_higher_sump_never_spills_more() => Gen.Select(Gen.Double[0.21, 0.6], Gen.Double[0.21, 0.6]).Sample((a, b) =>
    {
        var low = LevelSolver.Solve(LoopSamples.Beds(sumpHeight: Math.Min(a, b)));
        var high = LevelSolver.Solve(LoopSamples.Beds(sumpHeight: Math.Max(a, b)));
        Assert.All(low.Zip(high), p => Assert.True(p.Second.OnFloor <= p.First.OnFloor + 1e-12, $"{p.First.Kind}"));
    }, iter: 500);

    // A wider sump with the same water; a broken line spills as much from either, so only the cases without a break are asked.
    [Fact]
    public void A_wider_sump_with_the_same_water_never_spills_more() => Gen.Select(Gen.Double[0.5, 3], Gen.Double[0.5, 3]).Sample((a, b) =>
    {
        var small = LevelSolver.Solve(LoopSamples.Beds(sumpHeight: 0.4, sumpArea: Math.Min(a, b)));
        var wide = LevelSolver.Solve(LoopSamples.Beds(sumpHeight: 0.4, sumpArea: Math.Max(a, b)));
        Assert.All(small.Zip(wide).Where(p => p.First.Kind is not LevelCaseKind.Broken), p => Assert.True(p.Second.OnFloor <= p.First.OnFloor + 1e-12, $"{p.First.Kind}"));
    }, iter: 500);

    [Fact]
    public void More_water_never_spills_less() => Gen.Select(Gen.Double[0.06, 0.5], Gen.Double[0.06, 0.5]).Sample((a, b) =>
    {
        var less = LevelSolver.Solve(LoopSamples.Beds(sumpWater: Math.Min(a, b)));
        var more = LevelSolver.Solve(LoopSamples.Beds(sumpWater: Math.Max(a, b)));
        Assert.All(less.Zip(more), p => Assert.True(p.Second.OnFloor >= p.First.OnFloor - 1e-12, $"{p.First.Kind}"));
    }, iter: 500);

    // Against the rules of the formulary, which are checked against a general tank library.
    [Fact]
    public void Volumes_are_those_of_the_formulary() => Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.1, 3], Gen.Double[0, 1]).Sample((diameter, length, share) =>
    {
        var basin = Basin.Lying("drum", diameter, length, diameter);
        Assert.Equal(CircularSegment.Volume(diameter, length, share * diameter), 1000 * basin.VolumeAt(share * diameter), 1e-9);
    }, iter: 500);

    [Fact]
    public void Depth_and_volume_undo_each_other() => Gen.Select(LoopSamples.Any, Gen.Double[0, 1]).Sample((loop, share) =>
    {
        foreach (var basin in loop.Basins)
        {
            var volume = share * basin.Capacity;
            Assert.Equal(volume, basin.VolumeAt(basin.DepthAt(volume)), 1e-9 * basin.Capacity);
        }
    }, iter: 2000);
}
