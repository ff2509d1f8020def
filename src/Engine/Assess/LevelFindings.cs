using Runnel.Engine.Findings;
using Runnel.Engine.Levels;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>What the levels mean for floor, pump and fish, and what prevents it.</summary>
internal static class LevelFindings
{
    /// <summary>Less than this on the floor is a splash, m³.</summary>
    private const double Splash = 0.0005;

    private const string Practice = "worked out from the plan; what is assumed stands in the page on levels";

    public static void Say(Desk desk, LevelStudy study)
    {
        var running = study.Find(LevelCaseKind.Running)!;
        Running(desk, study, running);
        Off(desk, study);
        Dump(desk, study);
        Blocked(desk, [.. study.Cases.Where(c => c.Kind == LevelCaseKind.Blocked && c.OnFloor > running.OnFloor + Splash).OrderByDescending(c => c.OnFloor)]);
        foreach (var one in study.Cases)
        {
            if (one.Kind == LevelCaseKind.Broken)
            {
                Broken(desk, one);
            }
            Fish(desk, study, running, one);
        }
    }

    private static Severity Flood(Desk desk) => desk.Plan.Place.Setting == Setting.Indoors ? Severity.Grave : Severity.Warning;

    private static Amount Litres(double si) => new(si, Units.Litre);

    private static Amount Centimetres(double si) => new(si, Units.Centimetre);

    private static string Spilling(LevelCase one) => string.Join(" and ", one.Vessels.Where(v => v.Spilled > 0).OrderByDescending(v => v.Spilled).Select(v => v.Name));

    private static void Running(Desk desk, LevelStudy study, LevelCase running)
    {
        if (running.OnFloor > Splash)
        {
            var at = running.Vessels.MaxBy(v => v.Spilled).Name;
            var i = Index(study, at);
            var way = study.Loop.Outlets.Where(o => o.From == i).MinBy(o => o.Mouth);
            desk.Say(new Finding(
                "levels.running-spill", Flood(desk), at,
                way is null
                    ? Said.Of($"water comes in and nothing lets it out: {Litres(running.OnFloor)} over the rim before the pump has nothing left to take")
                    : Said.Of($"{Litres(running.OnFloor)} over the rim while the loop runs"),
                way is null ? "a drain in every vessel that water comes into" : Said.Of($"a hand's breadth between running water and the rim at {Centimetres(study.Loop.Basins[i].Height)}"),
                way is null ? $"Add a pipe from {at}, with overflow at:." : "A lower mouth, less water in the loop, or a higher vessel.",
                $"vessels/{at}", Practice));
        }
        if (running.RanDry.Count > 0)
        {
            var missing = study.Loop.Outlets.GroupBy(o => o.From).Sum(g => Missing(study, running, g));
            desk.Say(new Finding(
                "levels.pump-dry", Severity.Grave, running.RanDry[0],
                missing > Splash ? Said.Of($"the pump draws its vessel down to its lowest level before everything is full: {Litres(missing)} short") : "the pump draws its vessel down to its lowest level",
                "water over the pump in every state: a pump that sucks air burns out, and nothing flows",
                missing > Splash ? Said.Of($"Room and water for {Litres(missing * 1.1)} more in the vessel it stands in, or shallower or fewer beds.") : "More water in the vessel it stands in, or a pump that works in shallower water.",
                $"pumps/{running.RanDry[0]}/lowest level", Practice));
        }
    }

    private static double Missing(LevelStudy study, LevelCase running, IGrouping<int, Outlet> ways)
    {
        var main = ways.MinBy(o => o.Mouth)!;
        return Math.Max(0, study.Loop.Basins[ways.Key].VolumeAt(main.Mouth + main.Head) - running.Vessels[ways.Key].Volume);
    }

    private static void Off(Desk desk, LevelStudy study)
    {
        if (study.Find(LevelCaseKind.Off) is not { } off || off.OnFloor <= Splash)
        {
            return;
        }
        var at = off.Vessels.MaxBy(v => v.Spilled).Name;
        var siphoned = study.Loop.Lifts.Any(l => l.EndsUnderWater && !l.CheckValve);
        desk.Say(new Finding(
            "levels.power-cut", Flood(desk), at,
            Said.Of($"{Litres(off.OnFloor)} on the floor when the power fails: pipes, beds and the water over every mouth run back into {Spilling(off)}"),
            Said.Of($"room for {Litres(off.OnFloor + Held(off, at))} in {at}, which holds {Litres(Held(off, at))}"),
            Said.Of($"A vessel with room for {Litres(off.OnFloor * 1.1)} more, that much less water in the loop, shallower beds, or a standpipe overflow from {at} to a drain.{(siphoned ? " A pumped pipe ends under water and siphons its vessel back: end it over the rim, drill a siphon-break hole just under the water line, or fit a check valve and test it." : "")} Try it: fill the loop, run it, pull the plug, and stay."),
            $"vessels/{at}/shape", Practice));
    }

    private static double Held(LevelCase one, string vessel) => one.Vessels.First(v => v.Name == vessel).Volume;

    private static void Dump(Desk desk, LevelStudy study)
    {
        if (study.Find(LevelCaseKind.Dump) is not { } dump)
        {
            return;
        }
        var already = study.Find(LevelCaseKind.Off) is { } off && off.OnFloor > Splash;
        if (dump.OnFloor > Splash)
        {
            var at = dump.Vessels.MaxBy(v => v.Spilled).Name;
            desk.Say(new Finding(
                "levels.siphons-together", already ? Severity.Warning : Flood(desk), at,
                Said.Of($"{Litres(dump.OnFloor)} over the rim of {Spilling(dump)} when all siphon beds empty at once"),
                "room for all of them: siphons fall into step sooner or later",
                Said.Of($"Room for {Litres(dump.OnFloor * 1.1)} more in {at}, lower standpipes, or fewer beds on siphons."), $"vessels/{at}/shape", Practice));
            return;
        }
        foreach (var vessel in dump.Vessels)
        {
            var i = Index(study, vessel.Name);
            var siphons = study.Loop.Outlets.Where(o => o.Kind == OutletKind.Siphon && o.To.Contains(i)).Sum(o => o.Bore * o.Bore * study.Loop.Basins[o.From].Count);
            var overflows = study.Loop.Outlets.Where(o => o.From == i).Sum(o => o.Bore * o.Bore);
            if (vessel.PeakSpilled > Splash && overflows < siphons)
            {
                desk.Say(new Finding(
                    "levels.siphon-rush", Severity.Warning, vessel.Name,
                    Said.Of($"siphons that together are wider than the overflow: up to {Litres(vessel.PeakSpilled)} over the rim if they empty faster than it drains"),
                    "an overflow at least as wide as the siphons that empty into it together",
                    "A wider or a second overflow, a lower mouth, or narrower siphons.", $"vessels/{vessel.Name}", "common practice, no source"));
            }
        }
    }

    private static void Blocked(Desk desk, IReadOnlyList<LevelCase> floods)
    {
        if (floods.Count == 0)
        {
            return;
        }
        var pieces = new List<object> { "roots, a leaf or a fish in a drain and the pump left on put on the floor " };
        foreach (var one in floods)
        {
            var over = Spilling(one);
            pieces.AddRange([pieces.Count > 1 ? ", " : "", Litres(one.OnFloor), $" (drain of {one.Of}{(over == one.Of ? "" : $": over the rim of {over}")})"]);
        }
        var worst = floods[0].Of!;
        desk.Say(new Finding(
            "levels.drain-blocked", Flood(desk), string.Join(", ", floods.Select(f => f.Of)), new Said(pieces),
            "a second way out of every vessel that water comes into, or a pump that stops before the vessel is full",
            "A second drain from each, a few centimetres under the rim, to the same place; a guard over the mouth; or a float switch that stops the pump: set its depth as lowest level:.",
            $"vessels/{worst}", Practice));
    }

    private static void Broken(Desk desk, LevelCase one)
    {
        if (one.OnFloor <= Splash)
        {
            return;
        }
        desk.Say(new Finding(
            "levels.line-broken", desk.Plan.Place.Setting == Setting.Indoors ? Severity.Warning : Severity.Note, one.Of!,
            Said.Of($"up to {Litres(one.OnFloor)} on the floor if the line of {one.Of} comes off and the pump runs on"),
            "as little as can be: everything over the lowest level in the pump's vessel, and what drains into it",
            "A float switch that stops the pump (set its depth as lowest level:), clamps on every hose, a tray with a water alarm, a smaller sump filled less. Look behind it after every cleaning.",
            $"pumps/{one.Of}/lowest level", Practice));
    }

    /// <summary>Fish are left with too little: less than half of what they live in.</summary>
    private static void Fish(Desk desk, LevelStudy study, LevelCase running, LevelCase one)
    {
        for (var i = 0; i < one.Vessels.Count; i++)
        {
            var (vessel, usual) = (one.Vessels[i], running.Vessels[i].Volume);
            if (desk.Plan.Vessels[vessel.Name].Role != VesselRole.FishTank || vessel.Volume >= usual / 2)
            {
                continue;
            }
            var pumped = study.Loop.Lifts.Any(l => l.From == i);
            desk.Say(new Finding(
                "levels.fish-left", Severity.Grave, vessel.Name,
                Said.Of($"{Litres(vessel.Volume)} left for the fish, {Centimetres(vessel.Level)} deep, of {Litres(usual)}: {Cause(one)}"),
                Said.Of($"no way for the water to leave the fish: at least {Litres(usual / 2)} whatever breaks"),
                pumped
                    ? "Stand the pump in a sump and let the fish tank overflow into it; or raise the pump's intake, or a float switch, to half the depth (lowest level:)."
                    : "End the pumped pipe over the rim, drill a siphon-break hole just under the water line, or raise the drain's mouth.",
                $"vessels/{vessel.Name}", Practice));
        }
    }

    private static string Cause(LevelCase one) => one.Kind switch
    {
        LevelCaseKind.Rest => "before the pump is started",
        LevelCaseKind.Running => "while the loop runs",
        LevelCaseKind.Dump => "all siphon beds emptied at once",
        LevelCaseKind.Off => "after a power cut",
        LevelCaseKind.Blocked => $"the drain of {one.Of} is blocked and the pump runs on",
        LevelCaseKind.Broken => $"the line of {one.Of} breaks and the pump runs on",
        _ => throw new ArgumentOutOfRangeException(nameof(one), one.Kind, "unknown case"),
    };

    private static int Index(LevelStudy study, string vessel)
    {
        for (var i = 0; i < study.Loop.Basins.Count; i++)
        {
            if (study.Loop.Basins[i].Name == vessel)
            {
                return i;
            }
        }
        return -1;
    }
}
