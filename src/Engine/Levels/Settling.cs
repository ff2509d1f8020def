namespace Runnel.Engine.Levels;

/// <summary>Water that finds its level: a weir between two vessels passes what stands above it, and vessels that stand above the weir between them share one level.</summary>
/// <remarks>
/// Quasi-static: no time, no momentum. Poured water runs down the lowest weir of its vessel to lower vessels, equally where several lie at one
/// height; a vessel that no weir empties rises until the water backs up over a weir and joins its neighbour, or until the lowest rim
/// of those joined spills. Volumes are only moved, so that they add up whatever the shapes.
/// </remarks>
internal sealed class Settling
{
    /// <summary>Heights that differ by less are one height, m.</summary>
    private const double Hair = 1e-9;

    private readonly Basin[] _basins;
    private readonly List<Weir> _weirs = [];
    private readonly double[] _surface;
    private readonly double[] _surplus;
    private readonly int[] _group;

    public Settling(IReadOnlyList<Basin> basins, IReadOnlyList<double> volumes)
    {
        _basins = [.. basins];
        Volume = [.. volumes];
        Spilled = new double[_basins.Length];
        Sink = new bool[_basins.Length];
        _surface = new double[_basins.Length];
        _surplus = new double[_basins.Length];
        _group = new int[_basins.Length];
    }

    /// <summary>Water in each vessel, m³.</summary>
    public double[] Volume { get; }

    /// <summary>Water over each rim so far, m³.</summary>
    public double[] Spilled { get; }

    /// <summary>Vessels that take whatever comes, without level or rim: those that a pump draws on.</summary>
    public bool[] Sink { get; }

    /// <summary>Depth of water, m.</summary>
    public double Depth(int i) => _basins[i].DepthAt(Volume[i]);

    public void Clear() => _weirs.Clear();

    /// <summary>A weir at a depth in the first vessel; never below the bottom of the second.</summary>
    public void Weir(int from, int to, double depth)
    {
        if (from != to)
        {
            _weirs.Add(new(from, to, Math.Max(_basins[from].Bottom + depth, _basins[to].Bottom)));
        }
    }

    /// <summary>Lets everything that stands above a weir run, from whatever volumes there are.</summary>
    public void Relax()
    {
        for (var i = 0; i < _basins.Length; i++)
        {
            _group[i] = i;
            _surplus[i] = 0;
            if (Sink[i])
            {
                continue;
            }
            var basin = _basins[i];
            var held = Volume[i];
            if (held > basin.Capacity)
            {
                held = basin.Capacity;
            }
            _surface[i] = basin.Bottom + basin.DepthAt(held);
            foreach (var weir in _weirs)
            {
                if ((weir.A == i || weir.B == i) && weir.Height < _surface[i])
                {
                    _surface[i] = Math.Max(weir.Height, basin.Bottom);
                    held = Math.Min(held, basin.VolumeAt(weir.Height - basin.Bottom));
                }
            }
            _surplus[i] = Volume[i] - held;
            Volume[i] = held;
        }
        for (var i = 0; i < _basins.Length; i++)
        {
            if (_surplus[i] > 0)
            {
                Pour(i, _surplus[i], double.PositiveInfinity);
            }
        }
    }

    /// <summary>Pours water into a vessel and lets it run.</summary>
    public void Pour(int into, double water) => Pour(into, water, double.PositiveInfinity);

    /// <summary>Pours until the surface reaches a ceiling; gives back what did not go in.</summary>
    private double Pour(int into, double water, double ceiling)
    {
        while (water > 0)
        {
            if (Sink[into])
            {
                Volume[into] += water;
                return 0;
            }
            var group = _group[into];
            var surface = _surface[into];
            if (surface >= ceiling - Hair)
            {
                return water;
            }
            var (lowest, next, ways, joined) = Look(group, surface);
            if (joined)
            {
                continue;
            }
            water = ways > 0 ? Share(group, lowest + Hair, water, ways) : Raise(group, water, Math.Min(ceiling, next));
        }
        return 0;
    }

    /// <summary>What bounds a group of vessels at its surface: joins a neighbour that stands as high, else finds weirs that pass.</summary>
    private (double Lowest, double Next, int Ways, bool Joined) Look(int group, double surface)
    {
        var (lowest, next, ways) = (double.PositiveInfinity, double.PositiveInfinity, 0);
        foreach (var weir in _weirs)
        {
            var other = Beyond(weir, group);
            if (other < 0)
            {
                continue;
            }
            if (weir.Height > surface + Hair)
            {
                next = Math.Min(next, weir.Height);
            }
            else if (!Sink[other] && _surface[other] >= weir.Height - 2 * Hair)
            {
                Join(group, _group[other], Math.Max(surface, _surface[other]));
                return (lowest, next, 0, true);
            }
            else if (weir.Height < lowest)
            {
                lowest = weir.Height;
            }
        }
        foreach (var weir in _weirs)
        {
            ways += weir.Height <= lowest + Hair && double.IsFinite(lowest) && Beyond(weir, group) >= 0 ? 1 : 0;
        }
        return (lowest, next, ways, false);
    }

    /// <summary>Equal shares over every weir at the lowest height; the last takes what is left, so that nothing is left over by rounding.</summary>
    private double Share(int group, double height, double water, int ways)
    {
        var back = 0.0;
        foreach (var weir in _weirs)
        {
            if (ways > 0 && weir.Height <= height && Beyond(weir, group) is var other and >= 0)
            {
                var one = water / ways;
                water -= one;
                ways--;
                back += Pour(other, one, weir.Height);
            }
        }
        return back + water;
    }

    private int Beyond(Weir weir, int group)
    {
        var (a, b) = (_group[weir.A] == group, _group[weir.B] == group);
        return a == b ? -1 : a ? weir.B : weir.A;
    }

    private void Join(int a, int b, double surface)
    {
        for (var i = 0; i < _group.Length; i++)
        {
            if (_group[i] == b)
            {
                _group[i] = a;
            }
            if (_group[i] == a)
            {
                _surface[i] = surface;
            }
        }
    }

    /// <summary>Lets the surface of joined vessels rise; gives back what is left at the top, nothing once the lowest rim spills.</summary>
    private double Raise(int group, double water, double top)
    {
        var spills = -1;
        for (var i = 0; i < _group.Length; i++)
        {
            if (_group[i] == group && _basins[i].Rim < top - Hair)
            {
                (spills, top) = (i, _basins[i].Rim);
            }
        }
        var room = VolumeTo(group, top);
        if (water < room)
        {
            Rise(group, water, top);
            return 0;
        }
        Set(group, top);
        water -= room;
        if (spills >= 0)
        {
            Spilled[spills] += Math.Max(0, water);
            return 0;
        }
        return water;
    }

    private double VolumeTo(int group, double surface)
    {
        var more = 0.0;
        for (var i = 0; i < _group.Length; i++)
        {
            if (_group[i] == group)
            {
                more += _basins[i].VolumeAt(surface - _basins[i].Bottom) - Volume[i];
            }
        }
        return more;
    }

    private void Set(int group, double surface)
    {
        for (var i = 0; i < _group.Length; i++)
        {
            if (_group[i] == group)
            {
                Volume[i] = _basins[i].VolumeAt(surface - _basins[i].Bottom);
                _surface[i] = surface;
            }
        }
    }

    private void Rise(int group, double water, double top)
    {
        var (first, members) = (-1, 0);
        for (var i = 0; i < _group.Length; i++)
        {
            if (_group[i] == group)
            {
                (first, members) = (i, members + 1);
            }
        }
        if (members == 1)
        {
            Volume[first] += water;
            _surface[first] = _basins[first].Bottom + _basins[first].DepthAt(Volume[first]);
            return;
        }
        // Joined surfaces may differ by hairs: begin under the lowest.
        var (low, high) = (_surface[first] - 10 * Hair, top);
        for (var step = 0; step < 60 && high - low > 1e-12; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = VolumeTo(group, middle) > water ? (low, middle) : (middle, high);
        }
        // What the last step leaves goes to the fullest of them: water is only moved.
        var rest = water - VolumeTo(group, low);
        Set(group, low);
        for (var i = 0; i < _group.Length; i++)
        {
            first = _group[i] == group && Volume[i] > Volume[first] ? i : first;
        }
        Volume[first] += rest;
    }
}

/// <summary>A height over which water passes between two vessels.</summary>
internal readonly record struct Weir(int A, int B, double Height);
