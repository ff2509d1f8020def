namespace Runnel.Engine.Flow;

/// <summary>What an air pump delivers at a depth: straight lines between the points that its maker prints.</summary>
/// <remarks>
/// An air pump that stands below the water can siphon the tank through its own hose when the power stops: put it above the water, or a
/// check valve in each line, and a drip loop in its cord.
/// </remarks>
public sealed class AirPumpCurve
{
    private readonly (double Depth, double Flow)[] _points;

    private AirPumpCurve((double Depth, double Flow)[] points) => _points = points;

    /// <summary>The curve through points.</summary>
    /// <param name="points">Air, m³/s, at depth, m, two or more, in any order; air must fall as depth grows.</param>
    /// <exception cref="ArgumentException">The points make no curve; the message says why.</exception>
    public static AirPumpCurve Through(params IReadOnlyList<(double Depth, double Flow)> points)
    {
        var sorted = points.OrderBy(p => p.Depth).ToArray();
        if (sorted.Length < 2)
        {
            throw new ArgumentException("a curve needs two points", nameof(points));
        }
        for (var i = 0; i < sorted.Length; i++)
        {
            Range.Within(sorted[i].Depth, 0, OxygenTransfer.MaxDepth);
            Range.Within(sorted[i].Flow, 0, OxygenTransfer.MaxAir);
            if (i > 0 && !(sorted[i].Depth > sorted[i - 1].Depth && sorted[i].Flow < sorted[i - 1].Flow))
            {
                throw new ArgumentException("air must fall as depth grows, from each point to the next", nameof(points));
            }
        }
        return new(sorted);
    }

    /// <summary>Air at a depth, m³/s: none beyond the depth where the last line meets nought; above the first point, its value.</summary>
    /// <param name="depth">Depth of the stones, m, from 0 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public double FlowAt(double depth)
    {
        Range.Within(depth, 0, OxygenTransfer.MaxDepth);
        if (depth <= _points[0].Depth)
        {
            return _points[0].Flow;
        }
        var next = Array.FindIndex(_points, p => p.Depth >= depth);
        var i = next < 0 ? _points.Length - 1 : next;
        var (a, b) = (_points[i - 1], _points[i]);
        return Math.Max(0, a.Flow + (b.Flow - a.Flow) * (depth - a.Depth) / (b.Depth - a.Depth));
    }
}
