namespace Runnel.Engine.Levels;

/// <summary>The cases a grower must fear.</summary>
public enum LevelCaseKind
{
    /// <summary>Filled, the pump never started.</summary>
    Rest,

    /// <summary>Running steadily, siphon beds full to the brim of their standpipes.</summary>
    Running,

    /// <summary>Running, and all siphon beds empty at once.</summary>
    Dump,

    /// <summary>Pump off, everything drained back.</summary>
    Off,

    /// <summary>One drain blocked, the pump left running.</summary>
    Blocked,

    /// <summary>A pump's line broken, the pump left running.</summary>
    Broken,
}

/// <summary>Where the water is in one case.</summary>
public sealed record LevelCase
{
    public required LevelCaseKind Kind { get; init; }

    /// <summary>Vessel whose drain is blocked, or pump whose line is broken; null otherwise.</summary>
    public string? Of { get; init; }

    /// <summary>What happened, in a few words: "drain of bed one blocked".</summary>
    public string Label => Kind switch
    {
        LevelCaseKind.Rest => "before the pump is started",
        LevelCaseKind.Running => "running",
        LevelCaseKind.Dump => "all siphon beds emptied at once",
        LevelCaseKind.Off => "pump off, drained back",
        LevelCaseKind.Blocked => $"drain of {Of} blocked",
        LevelCaseKind.Broken => $"line of {Of} broken",
        _ => throw new InvalidOperationException($"no words for {Kind}"),
    };

    /// <summary>In the order of the loop's vessels.</summary>
    public required IReadOnlyList<VesselLevel> Vessels { get; init; }

    /// <summary>Water left in pipes, m³.</summary>
    public double InPipes { get; init; }

    /// <summary>Water that ran out of a broken line, m³.</summary>
    public double FromLine { get; init; }

    /// <summary>Pumps that suck air in the end.</summary>
    public IReadOnlyList<string> RanDry { get; init; } = [];

    /// <summary>All water on the floor, m³.</summary>
    public double OnFloor => FromLine + Vessels.Sum(v => v.Spilled);

    /// <summary>All water there is, m³: the same in every case.</summary>
    public double Total => InPipes + OnFloor + Vessels.Sum(v => v.Volume);
}

/// <summary>One vessel in one case.</summary>
/// <param name="Name">The grower's name.</param>
/// <param name="Level">Depth of water, m.</param>
/// <param name="Volume">Water in all alike, m³.</param>
/// <param name="Free">From the water to the rim, m.</param>
/// <param name="Spilled">Water that went over its rim, m³.</param>
/// <param name="Peak">Depth of water before its overflow has taken anything away, m: what the siphons would do if they emptied at a stroke.</param>
/// <param name="PeakSpilled">Water over its rim at that moment, m³. A bound, not part of the balance.</param>
public readonly record struct VesselLevel(string Name, double Level, double Volume, double Free, double Spilled, double Peak, double PeakSpilled);

/// <summary>A loop and its cases.</summary>
/// <param name="Loop">Vessels, drains and pumped pipes as they were taken.</param>
/// <param name="Cases">At rest, running, dumping when there is a siphon, off, each drain blocked, each line broken.</param>
public sealed record LevelStudy(WaterLoop Loop, IReadOnlyList<LevelCase> Cases)
{
    /// <summary>The first case of a kind, or null.</summary>
    public LevelCase? Find(LevelCaseKind kind) => Cases.FirstOrDefault(c => c.Kind == kind);
}
