using System.Diagnostics.CodeAnalysis;

namespace Runnel.Engine.Flow;

/// <summary>Head that a pump gives at a flow. SI: m and m³/s.</summary>
/// <remarks>
/// One point: the parabola of <see cref="FromDesignPoint"/>. Two points: a straight line, which lies under the bowed curve of a
/// centrifugal pump between the ends printed on its box and so promises less, not more. Three or more: a smooth curve through all
/// of them that never rises (Fritsch and Carlson 1980, SIAM Journal on Numerical Analysis 17, 238-246), straight on beyond the ends.
/// </remarks>
public sealed class PumpCurve
{
    private readonly double[] _flows;
    private readonly double[] _heads;
    private readonly double[] _slopes;
    private readonly bool _parabola;

    private PumpCurve(double[] flows, double[] heads, double[] slopes, bool parabola = false) =>
        (_flows, _heads, _slopes, _parabola) = (flows, heads, slopes, parabola);

    /// <summary>Head at no flow, m.</summary>
    public double ShutOffHead => HeadAt(0);

    /// <summary>Flow at no head, m³/s: what many boxes print.</summary>
    public double FreeFlow => Numerics.Root.Rising(q => -HeadAt(q), 0, _flows[^1] + Math.Max(0, _heads[^1]) / -SlopeAt(_flows[^1]) + 1e-12);

    /// <summary>The curve that a single design point implies.</summary>
    /// <param name="flow">Flow at the design point, m³/s, above 0 to 2.</param>
    /// <param name="head">Head at the design point, m, above 0 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>H = 4/3 H0 − (H0/3)(Q/Q0)²: a third more at no flow, none at twice the flow. Source: EPANET 2.2 manual. A guess about any
    /// particular pump.</remarks>
    public static PumpCurve FromDesignPoint(double flow, double head)
    {
        Range.Within(flow, 1e-9, Limits.MaxFlow);
        Range.Within(head, 1e-6, Limits.MaxHead);
        return new([0, 2 * flow], [4 * head / 3, 0], [], parabola: true);
    }

    /// <summary>The curve through points, or why there is none.</summary>
    /// <param name="points">Head, m, at flow, m³/s, in any order; two or more.</param>
    /// <param name="curve">The curve.</param>
    /// <param name="why">What is wrong with the points, in words.</param>
    public static bool TryThrough(
        IEnumerable<(double Head, double Flow)> points, [NotNullWhen(true)] out PumpCurve? curve, [NotNullWhen(false)] out string? why)
    {
        var sorted = points.OrderBy(p => p.Flow).ToArray();
        curve = null;
        why = null;
        if (sorted.Length < 2)
        {
            why = "a curve needs two points";
        }
        else if (Array.Exists(sorted, p => !(p.Flow is >= 0 and <= Limits.MaxFlow) || !(p.Head is >= 0 and <= Limits.MaxHead)))
        {
            why = "head and flow of each point must be a number, nought or more";
        }
        else if (Enumerable.Range(1, sorted.Length - 1).Any(i => sorted[i].Flow - sorted[i - 1].Flow < 1e-9 || sorted[i - 1].Head - sorted[i].Head < 1e-6))
        {
            why = "head must fall as flow rises, from each point to the next";
        }
        if (why is not null)
        {
            return false;
        }
        double[] flows = [.. sorted.Select(p => p.Flow)];
        double[] heads = [.. sorted.Select(p => p.Head)];
        curve = new(flows, heads, MonotoneSlopes(flows, heads));
        return true;
    }

    /// <summary>The curve through points.</summary>
    /// <param name="points">Head, m, at flow, m³/s, in any order; two or more.</param>
    /// <exception cref="ArgumentException">The points make no curve; the message says why.</exception>
    public static PumpCurve Through(params IReadOnlyList<(double Head, double Flow)> points) =>
        TryThrough(points, out var curve, out var why) ? curve : throw new ArgumentException(why, nameof(points));

    /// <summary>Head at a flow, m; negative beyond the flow at no head.</summary>
    /// <param name="flow">Flow, m³/s; below nought the head at no flow and a little more.</param>
    public double HeadAt(double flow)
    {
        if (_parabola)
        {
            var share = flow / _flows[1];
            return _heads[0] * (1 - share * Math.Abs(share));
        }
        if (flow <= _flows[0])
        {
            return _heads[0] + _slopes[0] * (flow - _flows[0]);
        }
        if (flow >= _flows[^1])
        {
            return _heads[^1] + _slopes[^1] * (flow - _flows[^1]);
        }
        var (i, width, t) = Piece(flow);
        return _heads[i] * (1 + 2 * t) * (1 - t) * (1 - t) + _heads[i + 1] * t * t * (3 - 2 * t)
            + width * (_slopes[i] * t * (1 - t) * (1 - t) - _slopes[i + 1] * t * t * (1 - t));
    }

    /// <summary>How steeply the head falls at a flow, m per m³/s, never above nought.</summary>
    public double SlopeAt(double flow)
    {
        if (_parabola)
        {
            return -2 * _heads[0] * Math.Abs(flow) / (_flows[1] * _flows[1]);
        }
        if (flow <= _flows[0])
        {
            return _slopes[0];
        }
        if (flow >= _flows[^1])
        {
            return _slopes[^1];
        }
        var (i, width, t) = Piece(flow);
        return (_heads[i + 1] - _heads[i]) * 6 * t * (1 - t) / width + _slopes[i] * (1 - t) * (1 - 3 * t) + _slopes[i + 1] * t * (3 * t - 2);
    }

    /// <summary>The same pump at another speed.</summary>
    /// <param name="ratio">New speed over old, from 0.05 to 5.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>Flow goes with the ratio, head with its square. Source: affinity laws.</remarks>
    public PumpCurve AtSpeed(double ratio)
    {
        Range.Within(ratio, Affinity.MinRatio, Affinity.MaxRatio);
        return new([.. _flows.Select(q => q * ratio)], [.. _heads.Select(h => h * ratio * ratio)], [.. _slopes.Select(s => s * ratio)], _parabola);
    }

    /// <summary>Where the pump meets what the pipes ask for.</summary>
    /// <param name="system">Head that the system asks for at a flow, m: lift and losses; must not fall as flow rises.</param>
    /// <returns>Flow, m³/s, and head, m. No flow, with the head at no flow, when the pump cannot lift so high.</returns>
    public (double Flow, double Head) WorkingPoint(Func<double, double> system)
    {
        ArgumentNullException.ThrowIfNull(system);
        // Water that runs downhill draws more through a pump than its free flow.
        var most = Math.Min(Limits.MaxFlow, 10 * FreeFlow);
        var flow = Numerics.Root.Rising(q => system(q) - HeadAt(q), 0, most);
        return (flow, HeadAt(flow));
    }

    private (int Piece, double Width, double Share) Piece(double flow)
    {
        var i = Array.BinarySearch(_flows, flow);
        i = Math.Clamp(i < 0 ? ~i - 1 : i, 0, _flows.Length - 2);
        var width = _flows[i + 1] - _flows[i];
        return (i, width, (flow - _flows[i]) / width);
    }

    private static double[] MonotoneSlopes(double[] x, double[] y)
    {
        var n = x.Length;
        var chords = new double[n - 1];
        for (var i = 0; i < n - 1; i++)
        {
            chords[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        var slopes = new double[n];
        (slopes[0], slopes[^1]) = (chords[0], chords[^1]);
        for (var i = 1; i < n - 1; i++)
        {
            // Weighted harmonic mean: falls where both neighbours fall, and never more than three times either.
            var (left, right) = (x[i] - x[i - 1], x[i + 1] - x[i]);
            slopes[i] = 3 * (left + right) / ((2 * right + left) / chords[i - 1] + (right + 2 * left) / chords[i]);
        }
        return slopes;
    }
}
