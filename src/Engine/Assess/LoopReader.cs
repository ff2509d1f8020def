using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Levels;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Volumes;

namespace Runnel.Engine.Assess;

/// <summary>Reads vessels, drains and pumped pipes of a plan as a loop of levels.</summary>
internal sealed class LoopReader
{
    /// <summary>A level this near to a mouth is the level that the mouth holds, m.</summary>
    private const double AtTheMouth = 0.01;

    /// <summary>Water does not stand higher than this over a drain that works, m.</summary>
    private const double MostHead = 0.10;

    /// <summary>Water may stand this much higher in the lower vessel before the plan is disbelieved, m.</summary>
    private const double Believable = 0.01;

    private static readonly Estimate HeadOverMouth = Desk.Assumed(
        "levels/head", "Height of running water over the mouth of a drain", 1, 2, 3, Units.Centimetre, "common practice, no source");

    private readonly Desk _desk;
    private readonly List<VesselFacts> _vessels = [];
    private readonly List<Basin> _basins = [];
    private readonly List<double> _levels = [];
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<Figure> _used = [];

    private LoopReader(Desk desk) => _desk = desk;

    /// <summary>The loop and the inputs that it rests on; null without pipes, or with heights that cannot be, which is said.</summary>
    public static (WaterLoop Loop, IReadOnlyList<Figure> Used)? Read(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        if (desk.Plan.Pipes.Count == 0)
        {
            return null;
        }
        var reader = new LoopReader(desk);
        foreach (var facts in vessels)
        {
            reader.Add(facts);
        }
        return reader.Connect() is { } loop ? (loop, reader._used) : null;
    }

    private double Use(Estimate estimate)
    {
        var figure = _desk.Take(estimate);
        _used.Add(figure);
        return figure.Si;
    }

    private void Add(VesselFacts facts)
    {
        var vessel = facts.Vessel;
        var basin = Form(vessel, Use(vessel.AboveFloor)) with { Count = _desk.Take(vessel.Count).Si };
        var media = 0.0;
        if (vessel.Role == VesselRole.MediaBed)
        {
            media = Math.Min(vessel.MediaDepth is { } depth ? _desk.Take(depth).Si : 0.30, basin.Height);
            if (facts.Medium is { } medium)
            {
                basin = basin with { Media = media, Voids = Math.Clamp(_desk.Take(medium.Voids).Si, 0.01, 1) };
            }
        }
        if (basin.Capacity <= 0 || !double.IsFinite(basin.Capacity))
        {
            return;
        }
        _used.Add(facts.Water);
        _index.Add(vessel.Name, _basins.Count);
        _vessels.Add(facts);
        _basins.Add(basin);
        // Four fifths of the bed's media or of the height, as for the volume of water.
        _levels.Add(Math.Min(basin.Height, vessel.Level is { } level ? _desk.Take(level).Si : 0.8 * (vessel.Role == VesselRole.MediaBed ? media : basin.Height)));
    }

    private Basin Form(Vessel vessel, double bottom)
    {
        var name = vessel.Name;
        switch (vessel.Shape)
        {
            case BoxShape box:
                return Basin.Straight(name, _desk.Take(box.Length).Si * _desk.Take(box.Width).Si, _desk.Take(box.Height).Si, bottom);
            case RoundShape round:
                return Round(_desk.Take(round.Diameter).Si, _desk.Take(round.Height).Si);
            case DrumShape drum:
                var litres = Units.Litre.FromSi(_desk.Take(drum.Volume).Si);
                var (across, along) = (Drum.Diameter(litres), Drum.Length(litres));
                return drum.Lengthwise ? Basin.Lying(name, across, along, across / 2, bottom) : Round(across, along);
            case ToteShape tote:
                return Basin.Straight(name, Tote.Length * Tote.Width, Tote.HeightOnPallet(Units.Litre.FromSi(_desk.Take(tote.Volume).Si)), bottom);
            case PipeShape pipe:
                var bore = _desk.Take(pipe.Diameter).Si;
                return Basin.Lying(name, bore, _desk.Take(pipe.Length).Si, bore, bottom);
            default:
                throw new InvalidOperationException($"no geometry for {vessel.Shape.GetType().Name}");
        }

        Basin Round(double diameter, double height) => Basin.Straight(name, Math.PI * diameter * diameter / 4, height, bottom);
    }

    private WaterLoop? Connect()
    {
        var (outlets, lifts) = (new List<Outlet>(), new List<Lift>());
        var filled = _levels.ToArray();
        var mains = MainPipes();
        for (var p = 0; p < _desk.Plan.Pipes.Count; p++)
        {
            var pipe = _desk.Plan.Pipes[p];
            var to = Indices(pipe.To);
            var from = Indices(pipe.From);
            if (to.Count == 0 || from.Count == 0)
            {
                continue;
            }
            var content = Math.PI * pipe.Size.Nominal * pipe.Size.Nominal / 4 * Use(pipe.Length);
            if (pipe.PumpedBy is null)
            {
                foreach (var at in from)
                {
                    outlets.Add(Way(at, to, pipe, mains[at] == p, content / from.Count));
                }
            }
            else if (_desk.Plan.Pumps.Values.FirstOrDefault(x => x.Name.Equals(pipe.PumpedBy, StringComparison.OrdinalIgnoreCase)) is { } pump)
            {
                lifts.Add(new(pump.Name, from[0], to, Use(pump.LowestLevel), content, pipe.EndsUnderWater, pipe.CheckValve));
            }
        }
        for (var i = 0; i < filled.Length; i++)
        {
            var main = outlets.Where(o => o.From == i).MinBy(o => o.Mouth);
            // A level written beside a mouth of the same height means what the mouth holds; a mouth alone says the level.
            if (main is not null && (_vessels[i].Vessel.Level is null || Math.Abs(filled[i] - main.Mouth) <= AtTheMouth))
            {
                filled[i] = Math.Max(filled[i], main.Mouth + main.Head);
                if (_vessels[i].Vessel.Level is null)
                {
                    filled[i] = main.Mouth + main.Head;
                }
            }
            filled[i] = Math.Min(filled[i], _basins[i].Height);
        }
        return Believe(outlets, filled)
            ? new WaterLoop { Basins = _basins, Filled = [.. filled.Select((d, i) => _basins[i].VolumeAt(d))], Outlets = outlets, Lifts = lifts }
            : null;
    }

    /// <summary>For each vessel the pipe that its drain belongs to: the first that names no height of its own, else the first.</summary>
    private int[] MainPipes()
    {
        var mains = new int[_basins.Count];
        Array.Fill(mains, -1);
        var pipes = _desk.Plan.Pipes;
        for (var p = 0; p < pipes.Count; p++)
        {
            if (pipes[p].PumpedBy is not null)
            {
                continue;
            }
            foreach (var at in Indices(pipes[p].From))
            {
                if (mains[at] < 0 || (pipes[p].OverflowAt is null && pipes[mains[at]].OverflowAt is not null))
                {
                    mains[at] = p;
                }
            }
        }
        return mains;
    }

    private Outlet Way(int at, List<int> to, Pipe pipe, bool isMain, double content)
    {
        var vessel = _vessels[at].Vessel;
        var drain = isMain ? vessel.Drain : null;
        var kind = drain?.Kind switch
        {
            DrainKind.Siphon => OutletKind.Siphon,
            DrainKind.StandpipeWithHoles => OutletKind.Holes,
            _ => OutletKind.Overflow,
        };
        var bore = drain?.Bore is { } wide ? Use(wide) : pipe.Size.Nominal;
        var level = _levels[at];
        var written = (pipe.OverflowAt ?? drain?.Height) is { } height ? Use(height) : (double?)null;
        if (kind == OutletKind.Siphon)
        {
            return new(at, to, written ?? level, 0, kind, bore, content);
        }
        var head = Use(HeadOverMouth);
        if (written is not { } mouth)
        {
            return new(at, to, Math.Max(0, level - head), Math.Min(head, level), kind, bore, content);
        }
        var over = level - mouth;
        return new(at, to, mouth, vessel.Level is not null && over > 0.0005 && over <= MostHead ? over : head, kind, bore, content);
    }

    private List<int> Indices(IReadOnlyList<string> names)
    {
        var found = new List<int>(names.Count);
        foreach (var name in names)
        {
            if (_index.TryGetValue(name, out var i) && !found.Contains(i))
            {
                found.Add(i);
            }
        }
        return found;
    }

    private bool Believe(List<Outlet> outlets, double[] filled)
    {
        var all = true;
        foreach (var outlet in outlets)
        {
            foreach (var to in outlet.To)
            {
                var (above, below) = (_basins[outlet.From].Bottom + filled[outlet.From], _basins[to].Bottom + filled[to]);
                if (below <= above + Believable)
                {
                    continue;
                }
                all = false;
                _desk.Say(new Finding(
                    "levels.uphill", Severity.Warning, _basins[outlet.From].Name,
                    Said.Of($"water at {new Amount(above, Units.Centimetre)} above the floor that should run by itself to {_basins[to].Name}, where it stands at {new Amount(below, Units.Centimetre)}"),
                    "a vessel that stands higher than the one it drains to",
                    "Write above floor: for the vessels that stand on something. Until then no level is worked out, neither floods nor dry pumps.",
                    $"vessels/{_basins[outlet.From].Name}/above floor"));
            }
        }
        return all;
    }
}
