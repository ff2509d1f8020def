namespace Runnel.Engine.Flow;

/// <summary>Flow and head in a network of pipes, pumps and water surfaces that does not change with time.</summary>
/// <remarks>
/// Newton's method on flows and heads together. Source: Todini and Pilati 1988, A gradient algorithm for the analysis of pipe networks, in
/// Computer Applications in Water Supply. Since no head loss falls as flow rises, there is one answer only; a line search along each
/// step (its content, Collins and others 1978, never rises) brings every start to it. Not for: pipes that are not full, water hammer, air in pipes.
/// </remarks>
public sealed class PipeNetwork
{
    // A check valve that is shut lets 1e-10 m³/s back for each metre of head; each link loses a micrometre at a litre a second of its own.
    private const double Shut = 1e10;
    private const double Trace = 1e-3;
    private const double SameHead = 1e-9;

    private readonly NetworkNode[] _nodes;
    private readonly NetworkLink[] _links;
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly int[] _unknown;
    private readonly int _unknowns;

    /// <summary>A network.</summary>
    /// <param name="nodes">Its nodes.</param>
    /// <param name="links">Its links.</param>
    /// <exception cref="ArgumentException">Two share a name, or a link ends at no node.</exception>
    public PipeNetwork(IEnumerable<NetworkNode> nodes, IEnumerable<NetworkLink> links)
    {
        _nodes = [.. nodes];
        _links = [.. links];
        var index = new Dictionary<string, int>();
        for (var i = 0; i < _nodes.Length; i++)
        {
            if (!index.TryAdd(_nodes[i].Id, i))
            {
                throw new ArgumentException($"two nodes are called {_nodes[i].Id}", nameof(nodes));
            }
        }
        if (_links.DistinctBy(l => l.Id).Count() != _links.Length)
        {
            throw new ArgumentException("two links share a name", nameof(links));
        }
        int Find(string id) => index.TryGetValue(id, out var i) ? i : throw new ArgumentException($"a link ends at {id}, which is no node", nameof(links));
        _from = [.. _links.Select(l => Find(l.From))];
        _to = [.. _links.Select(l => Find(l.To))];
        var unknowns = 0;
        _unknown = [.. _nodes.Select(n => n is Junction ? unknowns++ : -1)];
        _unknowns = unknowns;
    }

    /// <summary>Solves the network.</summary>
    /// <param name="viscosity">Kinematic viscosity, m²/s, from 1e-8 to 1e-3; see <see cref="WaterProperties"/>.</param>
    /// <param name="mostIterations">When to give up.</param>
    /// <returns>Flows and heads; when it gave up, why, with what it had until then.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The viscosity lies outside its range, or is not a number.</exception>
    public NetworkSolution Solve(double viscosity, int mostIterations = 100)
    {
        Range.Within(viscosity, Limits.MinViscosity, Limits.MaxViscosity);
        var flows = _links.Select(l => l.Guess).ToArray();
        var heads = _nodes.Select(n => n is Surface s ? s.Head : n is FreeOutlet o ? o.Height : 0).ToArray();
        if (Adrift() is { } lost)
        {
            return Report(flows, heads, viscosity, 0, $"{lost} is joined to no water surface or outlet");
        }
        var iteration = 0;
        string? why = "it did not settle";
        while (iteration < mostIterations)
        {
            var step = Step(flows, heads, viscosity);
            if (step is null)
            {
                why = "its equations have no single answer";
                break;
            }
            iteration++;
            // The first step brings the balance of every node about; from then on a step keeps it, at whatever length.
            var length = iteration == 1 ? 1 : Length(flows, heads, step, viscosity);
            for (var i = 0; i < flows.Length; i++)
            {
                flows[i] += length * step[i];
            }
            if (iteration > 1 && WorstHead(flows, heads, viscosity) <= SameHead)
            {
                why = null;
                break;
            }
        }
        return Report(flows, heads, viscosity, iteration, why);
    }

    private (double Loss, double Slope) At(int link, double flow, double viscosity)
    {
        var oneWay = _links[link].OneWay || _nodes[_to[link]] is FreeOutlet;
        if (oneWay && flow < 0)
        {
            var (shut, _) = _links[link].At(0, viscosity);
            return (shut + Shut * flow, Shut);
        }
        if (_nodes[_from[link]] is FreeOutlet && flow > 0)
        {
            return (Shut * flow, Shut);
        }
        var (loss, slope) = _links[link].At(flow, viscosity);
        return (loss + Trace * flow, slope + Trace);
    }

    private double[]? Step(double[] flows, double[] heads, double viscosity)
    {
        var n = _unknowns;
        var matrix = new double[n, n];
        var right = new double[n];
        for (var i = 0; i < _nodes.Length; i++)
        {
            if (_nodes[i] is Junction junction)
            {
                right[_unknown[i]] = -junction.Demand;
            }
        }
        var step = new double[flows.Length];
        var ease = new double[flows.Length];
        for (var l = 0; l < flows.Length; l++)
        {
            var (loss, slope) = At(l, flows[l], viscosity);
            (ease[l], step[l]) = (1 / slope, -loss / slope);
            var (a, b) = (_unknown[_from[l]], _unknown[_to[l]]);
            Join(matrix, right, a, b, ease[l], heads[_to[l]], -(flows[l] + step[l]));
            Join(matrix, right, b, a, ease[l], heads[_from[l]], flows[l] + step[l]);
        }
        if (!Cholesky(matrix, right))
        {
            return null;
        }
        for (var i = 0; i < _nodes.Length; i++)
        {
            heads[i] = _unknown[i] >= 0 ? right[_unknown[i]] : heads[i];
        }
        for (var l = 0; l < flows.Length; l++)
        {
            step[l] += ease[l] * (heads[_from[l]] - heads[_to[l]]);
        }
        return step;
    }

    private static void Join(double[,] matrix, double[] right, int row, int other, double ease, double otherHead, double flowIn)
    {
        if (row < 0)
        {
            return;
        }
        matrix[row, row] += ease;
        right[row] += flowIn;
        if (other >= 0)
        {
            matrix[row, other] -= ease;
        }
        else
        {
            right[row] += ease * otherHead;
        }
    }

    // How far along a step the content falls: its slope there, which never falls, is nought at the lowest point.
    private double Length(double[] flows, double[] heads, double[] step, double viscosity)
    {
        double Slope(double length)
        {
            var sum = 0.0;
            for (var l = 0; l < flows.Length; l++)
            {
                sum += step[l] * (At(l, flows[l] + length * step[l], viscosity).Loss - heads[_from[l]] + heads[_to[l]]);
            }
            return sum;
        }
        return Slope(1) <= 0.5 * Math.Abs(Slope(0)) ? 1 : Math.Max(1e-6, Numerics.Root.Rising(Slope, 0, 1));
    }

    private double WorstHead(double[] flows, double[] heads, double viscosity)
    {
        var worst = 0.0;
        for (var l = 0; l < flows.Length; l++)
        {
            worst = Math.Max(worst, Math.Abs(At(l, flows[l], viscosity).Loss - heads[_from[l]] + heads[_to[l]]));
        }
        return worst;
    }

    private NetworkSolution Report(double[] flows, double[] heads, double viscosity, int iterations, string? why)
    {
        var shut = Enumerable.Range(0, flows.Length).Where(l => Math.Abs(flows[l]) < 1e-7 && At(l, flows[l], viscosity).Slope >= Shut).ToList();
        var balance = _nodes.Select(n => n is Junction junction ? -junction.Demand : 0).ToArray();
        for (var l = 0; l < flows.Length; l++)
        {
            balance[_from[l]] -= flows[l];
            balance[_to[l]] += flows[l];
        }
        var worst = _nodes.Select((n, i) => n is Junction ? Math.Abs(balance[i]) : 0).DefaultIfEmpty().Max();
        return new(
            why is null,
            why,
            Enumerable.Range(0, flows.Length).ToDictionary(l => _links[l].Id, l => shut.Contains(l) ? 0 : flows[l]),
            Enumerable.Range(0, heads.Length).ToDictionary(i => _nodes[i].Id, i => heads[i]),
            [.. shut.Select(l => _links[l].Id)],
            worst,
            WorstHead(flows, heads, viscosity),
            iterations);
    }

    private string? Adrift()
    {
        var reached = _nodes.Select(n => n is not Junction).ToArray();
        for (var grew = true; grew;)
        {
            grew = false;
            for (var l = 0; l < _links.Length; l++)
            {
                if (reached[_from[l]] != reached[_to[l]])
                {
                    reached[_from[l]] = reached[_to[l]] = grew = true;
                }
            }
        }
        var lost = Array.IndexOf(reached, false);
        return lost < 0 ? null : _nodes[lost].Id;
    }

    private static bool Cholesky(double[,] a, double[] x)
    {
        var n = x.Length;
        for (var j = 0; j < n; j++)
        {
            var diagonal = a[j, j];
            for (var k = 0; k < j; k++)
            {
                diagonal -= a[j, k] * a[j, k];
            }
            if (!(diagonal > 0) || !double.IsFinite(diagonal))
            {
                return false;
            }
            a[j, j] = Math.Sqrt(diagonal);
            for (var i = j + 1; i < n; i++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= a[i, k] * a[j, k];
                }
                a[i, j] = sum / a[j, j];
            }
        }
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
            {
                x[i] -= a[i, k] * x[k];
            }
            x[i] /= a[i, i];
        }
        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                x[i] -= a[k, i] * x[k];
            }
            x[i] /= a[i, i];
        }
        return true;
    }
}

/// <summary>What a network does.</summary>
/// <param name="Settled">True if flows and heads fit each other within a billionth of a metre.</param>
/// <param name="Why">Why it gave up, or null.</param>
/// <param name="Flows">Flow of each link, m³/s, positive from its beginning to its end.</param>
/// <param name="Heads">Head of each node, m.</param>
/// <param name="Shut">Links that would flow backwards and are held shut: check valves, pumps that cannot lift so high, outlets above the water.</param>
/// <param name="WorstBalance">Largest flow by which a junction does not close, m³/s.</param>
/// <param name="WorstHead">Largest head by which a link does not fit its nodes, m.</param>
/// <param name="Iterations">Steps it took.</param>
public sealed record NetworkSolution(
    bool Settled, string? Why, IReadOnlyDictionary<string, double> Flows, IReadOnlyDictionary<string, double> Heads, IReadOnlyList<string> Shut,
    double WorstBalance, double WorstHead, int Iterations);
