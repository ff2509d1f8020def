namespace Runnel.Engine.Levels;

/// <summary>Where the water of a loop stands in every case that a grower must fear.</summary>
/// <remarks>
/// Assumptions, all on the side of more water on the floor: vessels run full at the levels they are filled to; siphon beds are full to the mouth
/// while running and empty to the bottom in every fault; pipes run full and empty when the pump stops; a submerged end lies on the
/// bottom; a broken line is broken at the pump; nobody notices, and the pump takes what it can reach. Every case holds the same water:
/// in vessels, in pipes and on the floor.
/// </remarks>
public static class LevelSolver
{
    /// <summary>All cases: at rest, running, dumping when there is a siphon, off, each drain blocked, each pump's line broken.</summary>
    /// <exception cref="ArgumentException">A vessel, drain or pump names a vessel that is not there, or a number is not finite.</exception>
    public static IReadOnlyList<LevelCase> Solve(WaterLoop loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        Check(loop);
        var net = new LoopNet(loop);
        var cases = new List<LevelCase>();
        var running = new CaseRun(net, loop.Basins, loop.Filled);
        running.Start();
        cases.Add(new CaseRun(net, loop.Basins, loop.Filled).Rest(off: false));
        cases.Add(running.Result(LevelCaseKind.Running));
        if (loop.Outlets.Any(o => o.Kind == OutletKind.Siphon && net.Fed[o.From]))
        {
            cases.Add(running.Copy().Dump());
        }
        if (loop.Lifts.Count > 0)
        {
            cases.Add(new CaseRun(net, loop.Basins, loop.Filled).Rest(off: true));
        }
        for (var i = 0; i < loop.Basins.Count; i++)
        {
            if (net.Fed[i] && net.Main[i] >= 0)
            {
                cases.Add(Blocked(net, running, net.Main[i]));
            }
        }
        foreach (var pump in loop.Lifts.Select(l => l.Pump).Distinct(StringComparer.Ordinal))
        {
            cases.Add(running.Copy().Broken(pump));
        }
        return cases;
    }

    /// <summary>Of several alike one is blocked: it takes what all of them would pass on.</summary>
    private static LevelCase Blocked(LoopNet net, CaseRun running, int outlet)
    {
        var at = net.Loop.Outlets[outlet].From;
        var all = net.Loop.Basins[at];
        if (all.Count <= 1)
        {
            return running.Copy().Blocked(outlet, 0);
        }
        var basins = net.Loop.Basins.ToArray();
        basins[at] = all with { Count = 1 };
        var run = running.Copy(basins);
        var others = run.Volume(at) * (1 - 1 / all.Count);
        run.Take(at, others);
        return run.Blocked(outlet, others);
    }

    private static void Check(WaterLoop loop)
    {
        var count = loop.Basins.Count;
        var indices = loop.Outlets.SelectMany(o => o.To.Append(o.From)).Concat(loop.Lifts.SelectMany(l => l.To.Append(l.From)));
        var numbers = loop.Filled.Concat(loop.Outlets.SelectMany(o => new[] { o.Mouth, o.Head, o.Pipe })).Concat(loop.Lifts.SelectMany(l => new[] { l.Lowest, l.Pipe }))
            .Concat(loop.Basins.SelectMany(b => new[] { b.Height, b.Capacity }));
        if (loop.Filled.Count != count || indices.Any(i => i < 0 || i >= count))
        {
            throw new ArgumentException("each vessel needs its water, and drains and pumps must name vessels that are there", nameof(loop));
        }
        if (numbers.Any(n => !double.IsFinite(n) || n < 0) || loop.Basins.Any(b => !double.IsFinite(b.Bottom) || b.Capacity <= 0))
        {
            throw new ArgumentException("sizes and volumes must be numbers above nothing", nameof(loop));
        }
    }
}
