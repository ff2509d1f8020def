using Runnel.Engine.Figures;
using Runnel.Engine.Levels;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Level, litres and free height of every vessel at rest, running, dumping, off, with a drain blocked and with a line broken.</summary>
internal static class LevelCheck
{
    private static readonly Source[] Rests = [Source.Definition("geometry; the same water in every case"), Source.Practice("what is assumed stands in the page on levels")];

    public static LevelStudy? Read(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        if (LoopReader.Read(desk, vessels) is not var (loop, used))
        {
            return null;
        }
        var study = new LevelStudy(loop, LevelSolver.Solve(loop));
        foreach (var one in study.Cases)
        {
            Name(desk, one, used);
        }
        LevelFindings.Say(desk, study);
        return study;
    }

    /// <summary>What a case is called in ids: rest, running, dump, off, blocked-bed-one, broken-loop-pump.</summary>
    internal static string IdOf(Desk desk, LevelCase one) => one.Kind switch
    {
        LevelCaseKind.Blocked => $"blocked-{desk.SlugOf("vessel", one.Of!)}",
        LevelCaseKind.Broken => $"broken-{desk.SlugOf("pump", one.Of!)}",
        _ => Word(one.Kind),
    };

    private static string Word(LevelCaseKind kind) => kind switch
    {
        LevelCaseKind.Rest => "rest",
        LevelCaseKind.Running => "running",
        LevelCaseKind.Dump => "dump",
        LevelCaseKind.Off => "off",
        LevelCaseKind.Blocked => "blocked",
        LevelCaseKind.Broken => "broken",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "unknown case"),
    };

    private static string Method(LevelCaseKind kind) => kind switch
    {
        LevelCaseKind.Rest => "the loop's water with pipes and siphon beds empty, run down over every mouth until it settles",
        LevelCaseKind.Running => "the loop's water pumped round until nothing changes, siphon beds full to the mouth",
        LevelCaseKind.Dump => "from running: all siphon beds emptied, the water run down until it settles",
        LevelCaseKind.Off => "the loop's water with pipes and siphon beds run back, over every mouth and through ends under water, until it settles",
        LevelCaseKind.Blocked => "from running: one drain shut, siphon beds empty, the pump left on until it only goes round or has nothing left to take",
        LevelCaseKind.Broken => "from running: the line open to the floor, what can drain has drained, the pump left on until it has nothing left to take",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "unknown case"),
    };

    private static void Name(Desk desk, LevelCase one, IReadOnlyList<Figure> used)
    {
        var (id, said, method) = ("levels." + IdOf(desk, one), one.Label, Method(one.Kind));
        foreach (var vessel in one.Vessels)
        {
            var at = $"{id}.{desk.SlugOf("vessel", vessel.Name)}";
            var ending = $" {vessel.Name}, {said}";
            Keep(vessel.Level, at + ".level", "Level of" + ending, Units.Centimetre);
            Keep(vessel.Free, at + ".free", "Free height in" + ending, Units.Centimetre);
            Keep(vessel.Volume, at + ".litres", "Water in" + ending, Units.Litre);
            if (vessel.Peak > vessel.Level)
            {
                Keep(vessel.Peak, at + ".peak", "Level before the overflow takes any away in" + ending, Units.Centimetre);
            }
        }
        Keep(one.OnFloor, id + ".floor", "Water on the floor, " + said, Units.Litre);

        void Keep(double si, string name, string label, Unit unit) => desk.Name(Figure.Computed(si, unit, label, method, used, Rests), name, label, unit);
    }
}
