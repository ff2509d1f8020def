namespace Runnel.Engine.Levels;

/// <summary>One case being worked out: where the water is so far.</summary>
internal sealed class CaseRun
{
    private const int MostRounds = 400;

    private readonly LoopNet _net;
    private readonly IReadOnlyList<Basin> _basins;
    private readonly Settling _water;
    private double _inPipes;
    private double _fromLine;

    public CaseRun(LoopNet net, IReadOnlyList<Basin> basins, IReadOnlyList<double> volumes)
    {
        (_net, _basins) = (net, basins);
        _water = new(basins, volumes);
        foreach (var lift in net.Loop.Lifts)
        {
            _inPipes += lift.Pipe;
        }
        foreach (var outlet in net.Loop.Outlets)
        {
            _inPipes += net.Fed[outlet.From] ? outlet.Pipe : 0;
        }
    }

    public double Volume(int vessel) => _water.Volume[vessel];

    public void Take(int vessel, double water) => _water.Volume[vessel] -= water;

    public CaseRun Copy(IReadOnlyList<Basin>? basins = null)
    {
        var copy = new CaseRun(_net, basins ?? _basins, _water.Volume) { _inPipes = _inPipes, _fromLine = _fromLine };
        _water.Spilled.CopyTo(copy._water.Spilled, 0);
        return copy;
    }

    /// <summary>Runs from the filled loop until nothing changes.</summary>
    public void Start()
    {
        SetWeirs(_net.Fed, siphonsEmpty: false);
        Pump(null);
    }

    public LevelCase Rest(bool off)
    {
        SetWeirs(new bool[_basins.Count], siphonsEmpty: true);
        _water.Relax();
        foreach (var outlet in _net.Loop.Outlets)
        {
            if (_net.Fed[outlet.From])
            {
                Empty(outlet.To, outlet.Pipe);
            }
        }
        foreach (var lift in _net.Loop.Lifts)
        {
            if (!off || !lift.CheckValve)
            {
                Empty([lift.From], lift.Pipe);
            }
        }
        // Each pass may open room where another had filled up.
        for (var pass = 0; off && pass < 4; pass++)
        {
            foreach (var lift in _net.Loop.Lifts.Where(l => l.EndsUnderWater && !l.CheckValve))
            {
                foreach (var to in lift.To)
                {
                    SiphonBack(to, lift.From);
                }
            }
        }
        return Result(off ? LevelCaseKind.Off : LevelCaseKind.Rest, pumping: false);
    }

    public LevelCase Dump()
    {
        var peak = (double[])_water.Volume.Clone();
        foreach (var outlet in _net.Loop.Outlets)
        {
            if (outlet.Kind == OutletKind.Siphon && _net.Fed[outlet.From])
            {
                foreach (var to in outlet.To)
                {
                    peak[to] += _water.Volume[outlet.From] / outlet.To.Count;
                }
                peak[outlet.From] -= _water.Volume[outlet.From];
            }
        }
        SetWeirs(_net.Fed, siphonsEmpty: true);
        _water.Relax();
        return Result(LevelCaseKind.Dump, peak: peak);
    }

    /// <summary>One drain blocked; of several alike, the others hold what is given.</summary>
    public LevelCase Blocked(int outlet, double others)
    {
        var blocked = _net.Loop.Outlets[outlet];
        SetWeirs(_net.Fed, siphonsEmpty: true, outlet);
        _net.IsPumped.CopyTo(_water.Sink, 0);
        var held = others;
        if (others > 0 && blocked.Kind == OutletKind.Siphon)
        {
            _water.Relax();
            Deal(blocked.To, others);
            held = 0;
        }
        Pump(null);
        return Result(LevelCaseKind.Blocked, _net.Loop.Basins[blocked.From].Name, others: held, at: blocked.From);
    }

    public LevelCase Broken(string pump)
    {
        var fed = _net.FedBy(l => l.Pump != pump);
        SetWeirs(fed, siphonsEmpty: true);
        _net.IsPumped.CopyTo(_water.Sink, 0);
        _water.Relax();
        foreach (var outlet in _net.Loop.Outlets)
        {
            if (_net.Fed[outlet.From] && !fed[outlet.From])
            {
                Empty(outlet.To, outlet.Pipe);
            }
        }
        foreach (var lift in _net.Loop.Lifts)
        {
            if (lift.Pump != pump)
            {
                continue;
            }
            _inPipes -= lift.Pipe;
            _fromLine += lift.Pipe;
            foreach (var to in lift.To)
            {
                if (lift.EndsUnderWater)
                {
                    _fromLine += _water.Volume[to];
                    _water.Volume[to] = 0;
                }
            }
        }
        Pump(pump);
        return Result(LevelCaseKind.Broken, pump);
    }

    public LevelCase Result(LevelCaseKind kind, string? of = null, double[]? peak = null, double others = 0, int at = -1, bool pumping = true)
    {
        var levels = new VesselLevel[_basins.Count];
        for (var i = 0; i < levels.Length; i++)
        {
            var basin = _basins[i];
            var level = _water.Depth(i);
            var most = peak is null ? level : Math.Max(level, basin.DepthAt(peak[i]));
            var over = peak is null ? 0 : Math.Max(0, peak[i] - basin.Capacity);
            levels[i] = new(basin.Name, level, _water.Volume[i] + (i == at ? others : 0), Math.Max(0, basin.Height - level), _water.Spilled[i], most, over);
        }
        var dry = new List<string>();
        foreach (var lift in _net.Loop.Lifts)
        {
            if (pumping && levels[lift.From].Level <= lift.Lowest + 1e-9 && !dry.Contains(lift.Pump))
            {
                dry.Add(lift.Pump);
            }
        }
        return new() { Kind = kind, Of = of, Vessels = levels, InPipes = Math.Max(0, _inPipes), FromLine = _fromLine, RanDry = dry };
    }

    private void SetWeirs(bool[] fed, bool siphonsEmpty, int blocked = -1)
    {
        _water.Clear();
        for (var o = 0; o < _net.Loop.Outlets.Count; o++)
        {
            var outlet = _net.Loop.Outlets[o];
            if (o == blocked)
            {
                continue;
            }
            var runs = fed[outlet.From];
            var depth = outlet.Kind switch
            {
                OutletKind.Siphon => runs && !siphonsEmpty ? outlet.Mouth : 0,
                OutletKind.Holes => runs ? outlet.Mouth + outlet.Head : 0,
                OutletKind.Overflow => outlet.Mouth + (runs ? outlet.Head : 0),
                _ => throw new InvalidOperationException($"no weir for {outlet.Kind}"),
            };
            foreach (var to in outlet.To)
            {
                _water.Weir(outlet.From, to, depth);
            }
        }
    }

    private void Empty(IReadOnlyList<int> to, double pipe)
    {
        _inPipes -= pipe;
        Deal(to, pipe);
    }

    private void Deal(IReadOnlyList<int> to, double water)
    {
        foreach (var one in to)
        {
            _water.Pour(one, water / to.Count);
        }
    }

    private void SiphonBack(int from, int to)
    {
        var (high, low) = (_basins[from], _basins[to]);
        var (held, under) = (_water.Volume[from], _water.Volume[to]);
        if (from == to || !(Fall(0) > 0))
        {
            return;
        }
        var (least, most) = (0.0, held);
        if (Fall(held) >= 0)
        {
            least = held;
        }
        for (var i = 0; i < 60 && least < most; i++)
        {
            var middle = (least + most) / 2;
            (least, most) = Fall(middle) > 0 ? (middle, most) : (least, middle);
        }
        _water.Volume[from] -= least;
        _water.Volume[to] += least;
        _water.Relax();

        double Fall(double moved) => high.Bottom + high.DepthAt(held - moved) - low.Bottom - low.DepthAt(under + moved);
    }

    /// <summary>Lets all pumps run until water only goes round, or until they have nothing left to take.</summary>
    private void Pump(string? broken)
    {
        _net.IsPumped.CopyTo(_water.Sink, 0);
        _water.Relax();
        foreach (var circuit in _net.Circuits)
        {
            Round(circuit, broken);
        }
        Array.Clear(_water.Sink);
        _water.Relax();
    }

    private void Round(Circuit circuit, string? broken)
    {
        var keep = (double[])circuit.Keep.Clone();
        var tiny = 1e-12 * _water.Volume.Sum();
        var before = new double[_basins.Count];
        var pumped = new double[circuit.Pumped.Length];
        for (var round = 0; round < MostRounds; round++)
        {
            _water.Spilled.CopyTo(before, 0);
            var (line, held) = (_fromLine, Held());
            var moved = 0.0;
            for (var n = 0; n < pumped.Length; n++)
            {
                pumped[n] = _water.Volume[circuit.Pumped[n]];
            }
            for (var turn = 0; turn < circuit.Pumped.Length; turn++)
            {
                // The sump once, the others until each has passed on what the rest sent.
                for (var n = turn == 0 ? 0 : 1; n < circuit.Pumped.Length; n++)
                {
                    moved += Send(circuit.Pumped[n], keep[n], broken);
                }
            }
            var kept = Held() - held;
            var lost = Lost(before, line);
            var shifted = 0.0;
            for (var n = 0; n < pumped.Length; n++)
            {
                shifted = Math.Max(shifted, Math.Abs(_water.Volume[circuit.Pumped[n]] - pumped[n]));
            }
            if (moved <= tiny || (Math.Abs(kept) <= tiny && lost <= tiny && shifted <= tiny))
            {
                return;
            }
            if (Math.Abs(kept) > tiny || lost <= tiny)
            {
                continue;
            }
            var drained = false;
            for (var n = 0; n < keep.Length; n++)
            {
                drained |= keep[n] > _net.Low[circuit.Pumped[n]];
                keep[n] = Math.Min(keep[n], _net.Low[circuit.Pumped[n]]);
            }
            if (!drained)
            {
                LoseTheRest(circuit, before, line, lost);
                return;
            }
        }
    }

    private double Send(int from, double keep, string? broken)
    {
        var water = _water.Volume[from] - keep;
        var pipes = _net.Loop.Lifts.Count(l => l.From == from);
        if (water <= 0 || pipes == 0)
        {
            return 0;
        }
        _water.Volume[from] = keep;
        foreach (var lift in _net.Loop.Lifts)
        {
            if (lift.From != from)
            {
                continue;
            }
            if (lift.Pump == broken)
            {
                _fromLine += water / pipes;
            }
            else
            {
                Deal(lift.To, water / pipes);
            }
        }
        return water;
    }

    /// <summary>No vessel takes more, and each turn loses the same share: in the end all of it, in the proportion of one turn.</summary>
    private void LoseTheRest(Circuit circuit, double[] before, double line, double lost)
    {
        var rest = 0.0;
        foreach (var p in circuit.Pumped)
        {
            var water = Math.Max(0, _water.Volume[p] - _net.Low[p]);
            _water.Volume[p] -= water;
            rest += water;
        }
        for (var i = 0; i < before.Length; i++)
        {
            _water.Spilled[i] += rest * (_water.Spilled[i] - before[i]) / lost;
        }
        _fromLine += rest * (_fromLine - line) / lost;
    }

    /// <summary>Lost in this turn: each difference by itself, for small losses beside large ones of before.</summary>
    private double Lost(double[] before, double line)
    {
        var lost = _fromLine - line;
        for (var i = 0; i < before.Length; i++)
        {
            lost += _water.Spilled[i] - before[i];
        }
        return lost;
    }

    private double Held()
    {
        var held = 0.0;
        for (var i = 0; i < _basins.Count; i++)
        {
            held += _net.IsPumped[i] ? 0 : _water.Volume[i];
        }
        return held;
    }
}
