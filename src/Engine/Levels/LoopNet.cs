namespace Runnel.Engine.Levels;

/// <summary>What follows from a loop's connections alone: what is fed, what each pump's water is.</summary>
internal sealed class LoopNet
{
    public LoopNet(WaterLoop loop)
    {
        Loop = loop;
        var count = loop.Basins.Count;
        Low = new double[count];
        IsPumped = new bool[count];
        Main = new int[count];
        Array.Fill(Main, -1);
        foreach (var lift in loop.Lifts)
        {
            var low = loop.Basins[lift.From].VolumeAt(lift.Lowest);
            Low[lift.From] = IsPumped[lift.From] ? Math.Min(Low[lift.From], low) : low;
            IsPumped[lift.From] = true;
        }
        for (var o = 0; o < loop.Outlets.Count; o++)
        {
            var at = loop.Outlets[o].From;
            if (Main[at] < 0 || loop.Outlets[o].Mouth < loop.Outlets[Main[at]].Mouth)
            {
                Main[at] = o;
            }
        }
        Fed = FedBy(_ => true);
        Circuits = FindCircuits();
    }

    public WaterLoop Loop { get; }

    /// <summary>Vessels that a pump sends water through.</summary>
    public bool[] Fed { get; }

    /// <summary>Vessels that a pump draws on.</summary>
    public bool[] IsPumped { get; }

    /// <summary>Water in a pumped vessel at which its pump sucks air, m³.</summary>
    public double[] Low { get; }

    /// <summary>The lowest way out of each vessel, or -1.</summary>
    public int[] Main { get; }

    /// <summary>Pumped vessels that share water; in each the one that takes up what the others leave comes first.</summary>
    public IReadOnlyList<Circuit> Circuits { get; }

    public bool[] FedBy(Func<Lift, bool> counts)
    {
        var fed = new bool[Loop.Basins.Count];
        foreach (var lift in Loop.Lifts)
        {
            if (counts(lift))
            {
                Mark(fed, lift.To);
            }
        }
        return fed;
    }

    private void Mark(bool[] reached, IReadOnlyList<int> to)
    {
        foreach (var i in to)
        {
            if (!reached[i])
            {
                reached[i] = true;
                foreach (var outlet in Loop.Outlets)
                {
                    if (outlet.From == i)
                    {
                        Mark(reached, outlet.To);
                    }
                }
            }
        }
    }

    private List<Circuit> FindCircuits()
    {
        var found = new List<Circuit>();
        var part = new int[Loop.Basins.Count];
        for (var i = 0; i < part.Length; i++)
        {
            part[i] = i;
        }
        foreach (var lift in Loop.Lifts)
        {
            Unite(part, lift.From, lift.To);
        }
        foreach (var outlet in Loop.Outlets)
        {
            Unite(part, outlet.From, outlet.To);
        }
        foreach (var group in Enumerable.Range(0, part.Length).Where(i => IsPumped[i]).GroupBy(i => part[i]))
        {
            // The lowest pumped vessel takes up what the others leave: the sump.
            var pumps = group.OrderBy(i => Loop.Basins[i].Bottom).ThenBy(i => Loop.Basins[i].Bottom + Loop.Basins[i].DepthAt(Loop.Filled[i])).ToArray();
            var reached = new bool[part.Length];
            var found2 = true;
            reached[pumps[0]] = true;
            while (found2)
            {
                found2 = false;
                foreach (var lift in Loop.Lifts)
                {
                    if (reached[lift.From] && lift.To.Any(t => !reached[t]))
                    {
                        Mark(reached, lift.To);
                        found2 = true;
                    }
                }
            }
            found.Add(new(pumps, [.. pumps.Select((p, n) => n == 0 || !reached[p] ? Low[p] : Math.Max(Low[p], Loop.Filled[p]))]));
        }
        return found;
    }

    private static void Unite(int[] part, int from, IReadOnlyList<int> to)
    {
        foreach (var t in to)
        {
            var (a, b) = (part[from], part[t]);
            for (var i = 0; a != b && i < part.Length; i++)
            {
                part[i] = part[i] == b ? a : part[i];
            }
        }
    }
}

/// <summary>Pumped vessels that share water.</summary>
/// <param name="Pumped">The sump first.</param>
/// <param name="Keep">What each keeps while water goes round, m³: two pumps in a row are taken to keep step.</param>
internal sealed record Circuit(int[] Pumped, double[] Keep);
