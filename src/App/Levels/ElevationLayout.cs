using Runnel.Engine.Levels;
using Runnel.Engine.Quantities;

namespace Runnel.App.Levels;

/// <summary>Where things stand in an elevation: heights to scale, columns side by side, the highest water first.</summary>
internal sealed class ElevationLayout
{
    public const double Width = 360;
    public const double Left = 40;
    public const double Right = 14;
    private const double Tall = 270;
    private const double Head = 30;

    private readonly double _low;
    private readonly double _pixels;
    private readonly double[] _middle;
    private readonly double[] _half;

    public ElevationLayout(WaterLoop loop, double top)
    {
        var basins = loop.Basins;
        _low = Math.Min(0, basins.Min(b => b.Bottom));
        var high = Math.Max(0.1, basins.Max(b => b.Rim));
        _pixels = Tall / (high - _low);
        High = high;
        Top = top;
        Risers = top + Head - 8;
        // As the water runs: by the height at which it stands while running.
        Order = [.. Enumerable.Range(0, basins.Count).OrderByDescending(i => Math.Round(basins[i].Bottom + basins[i].DepthAt(loop.Filled[i]), 3))];
        _middle = new double[basins.Count];
        _half = new double[basins.Count];
        var slot = (Width - Left - Right) / basins.Count;
        var widest = basins.Max(Across);
        for (var n = 0; n < basins.Count; n++)
        {
            var i = Order[n];
            _middle[i] = Left + slot * (n + 0.42);
            _half[i] = slot * (0.22 + 0.12 * Across(basins[i]) / widest);
        }
        Slot = slot;
    }

    public IReadOnlyList<int> Order { get; }

    public double Top { get; }

    /// <summary>Where pumped pipes cross over all vessels.</summary>
    public double Risers { get; }

    /// <summary>Height of the highest rim, m above the floor.</summary>
    public double High { get; }

    public double Low => _low;

    public double Slot { get; }

    public double Bottom => Y(_low);

    /// <summary>Pixels of a metre.</summary>
    public double Scale => _pixels;

    public double Y(double height) => Top + Head + (High - height) * _pixels;

    public double Middle(int vessel) => _middle[vessel];

    public double LeftOf(int vessel) => _middle[vessel] - _half[vessel];

    public double RightOf(int vessel) => _middle[vessel] + _half[vessel];

    public double WidthOf(int vessel) => 2 * _half[vessel];

    /// <summary>Heights to write at the side, m, in whole steps of the reader's unit.</summary>
    public IEnumerable<double> Ticks(Unit unit)
    {
        double[] steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
        var step = unit.ToSi(steps.FirstOrDefault(s => unit.ToSi(s) * _pixels >= 24, 10000));
        for (var n = (int)Math.Ceiling(_low / step - 1e-9); n * step <= High + 1e-9; n++)
        {
            yield return n * step;
        }
    }

    private static double Across(Basin basin) => Math.Sqrt(basin.Capacity / basin.Height);
}
