namespace Runnel.Engine.Light;

/// <summary>
/// What a lamp sends into each direction, measured: intensities over angles from straight down and around, as a photometric file of
/// type C has them.
/// </summary>
public sealed class IntensityTable
{
    private const double Degree = Math.PI / 180;

    private readonly double[] vertical;
    private readonly double[] horizontal;
    private readonly double[] candelas;

    /// <summary>A table over the whole circle, or one plane that holds all around.</summary>
    /// <param name="vertical">Angles from straight down, °, rising, within 0 to 180; two at least.</param>
    /// <param name="horizontal">Angles around, °: 0 alone, or rising from 0 to 360.</param>
    /// <param name="candelas">Intensities, cd, 0 or more: plane after plane.</param>
    /// <exception cref="ArgumentException">The table is not such.</exception>
    public IntensityTable(IReadOnlyList<double> vertical, IReadOnlyList<double> horizontal, IReadOnlyList<double> candelas)
    {
        ArgumentNullException.ThrowIfNull(vertical);
        ArgumentNullException.ThrowIfNull(horizontal);
        ArgumentNullException.ThrowIfNull(candelas);
        if (vertical.Count < 2 || !Rises(vertical) || vertical[0] < 0 || vertical[^1] > 180)
        {
            throw new ArgumentException("vertical angles must rise within 0 to 180", nameof(vertical));
        }
        if (horizontal.Count == 0 || horizontal[0] != 0 || !Rises(horizontal) || horizontal.Count > 1 && horizontal[^1] != 360)
        {
            throw new ArgumentException("horizontal angles must be 0 alone or rise from 0 to 360", nameof(horizontal));
        }
        if (candelas.Count != vertical.Count * horizontal.Count || candelas.Any(c => !double.IsFinite(c) || c < 0))
        {
            throw new ArgumentException("there must be one intensity, 0 or more, for each pair of angles", nameof(candelas));
        }
        (this.vertical, this.horizontal, this.candelas) = ([.. vertical], [.. horizontal], [.. candelas]);
        Flux = Sum(Zonal, 180);
        InterpolatedFlux = Sum(Exact, 180);
        Downward = InterpolatedFlux > 0 ? Sum(Exact, 90) / InterpolatedFlux : 0;
    }

    /// <summary>Angles from straight down, °.</summary>
    public IReadOnlyList<double> Vertical => vertical;

    /// <summary>Angles around, °: 0 alone if it is the same all around.</summary>
    public IReadOnlyList<double> Horizontal => horizontal;

    /// <summary>Light given off, lm, by the zonal method: mean of the two ends times the zone's solid angle.</summary>
    /// <remarks>Source: the zonal-cavity constants 2π (cos a − cos b) of lighting handbooks. Exact for a matt lamp on any grid.</remarks>
    public double Flux { get; }

    /// <summary>Light, lm, that the table holds when read between its angles by <see cref="At"/>: what a map must share out.</summary>
    public double InterpolatedFlux { get; }

    /// <summary>Share of that light that goes below the level of the lamp.</summary>
    public double Downward { get; }

    /// <summary>Greatest intensity, cd.</summary>
    public double Greatest => candelas.Max();

    /// <summary>Intensity in a direction, cd: straight between the angles of the table, none beyond its ends.</summary>
    /// <param name="down">Angle from straight down, °, from 0 to 180.</param>
    /// <param name="around">Angle around, °, from 0 to 360.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public double At(double down, double around = 0)
    {
        Range.Within(down, 0, 180);
        Range.Within(around, 0, 360);
        if (down < vertical[0] || down > vertical[^1])
        {
            return 0;
        }
        var (v, share) = Find(vertical, down);
        if (horizontal.Length == 1)
        {
            return Between(v, share);
        }
        var (h, turn) = Find(horizontal, around);
        var here = Between(h * vertical.Length + v, share);
        return here + turn * (Between((h + 1) * vertical.Length + v, share) - here);
    }

    /// <summary>A table from the planes that a file gives, the others by their symmetry.</summary>
    /// <param name="vertical">Angles from straight down, °.</param>
    /// <param name="horizontal">0 alone: the same all around; 0 to 90: four quadrants alike; 0 to 180: two halves alike; 90 to 270: the same
    /// about the other plane; 0 to beyond 180: none.</param>
    /// <param name="candelas">Intensities, plane after plane.</param>
    /// <exception cref="ArgumentException">The table is not such.</exception>
    public static IntensityTable Expand(IReadOnlyList<double> vertical, IReadOnlyList<double> horizontal, IReadOnlyList<double> candelas)
    {
        ArgumentNullException.ThrowIfNull(vertical);
        ArgumentNullException.ThrowIfNull(horizontal);
        ArgumentNullException.ThrowIfNull(candelas);
        if (horizontal.Count < 2 || vertical.Count * horizontal.Count != candelas.Count)
        {
            return new(vertical, horizontal, candelas);
        }
        var planes = horizontal.Select((angle, i) => (Angle: angle, Row: i)).ToList();
        if (horizontal[0] == 90 && horizontal[^1] == 270)
        {
            // The planes from 270 to 360 and 0 to 90 are those from 90 to 270 seen in the mirror of 90.
            planes = [.. planes.Where(p => p.Angle is >= 90 and <= 180).Reverse().Select(p => (180 - p.Angle, p.Row)),
                .. planes.Where(p => p.Angle > 90), .. planes.Where(p => p.Angle is >= 180 and < 270).Reverse().Select(p => (540 - p.Angle, p.Row))];
        }
        if (planes[^1].Angle == 90)
        {
            planes = [.. planes, .. Enumerable.Reverse(planes).Skip(1).Select(p => (180 - p.Angle, p.Row))];
        }
        if (planes[^1].Angle == 180)
        {
            planes = [.. planes, .. Enumerable.Reverse(planes).Skip(1).Select(p => (360 - p.Angle, p.Row))];
        }
        if (planes[^1].Angle < 360)
        {
            planes.Add((360, planes[0].Row));
        }
        return new(vertical, [.. planes.Select(p => p.Angle)],
            [.. planes.SelectMany(p => Enumerable.Range(p.Row * vertical.Count, vertical.Count)).Select(i => candelas[i])]);
    }

    private static bool Rises(IReadOnlyList<double> angles) =>
        angles.All(double.IsFinite) && angles.Zip(angles.Skip(1)).All(p => p.First < p.Second);

    private static (int Index, double Share) Find(double[] angles, double angle)
    {
        var (low, high) = (0, angles.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = angle < angles[middle] ? (low, middle) : (middle, high);
        }
        return (low, Math.Clamp((angle - angles[low]) / (angles[high] - angles[low]), 0, 1));
    }

    private double Between(int index, double share) => candelas[index] + share * (candelas[index + 1] - candelas[index]);

    private double Sum(Func<double, double, double, double, double> zone, double end)
    {
        var total = 0.0;
        for (var h = 0; h < horizontal.Length; h++)
        {
            var plane = 0.0;
            for (var v = 0; v + 1 < vertical.Length && vertical[v] < end; v++)
            {
                var (a, b) = (vertical[v], Math.Min(vertical[v + 1], end));
                var first = candelas[h * vertical.Length + v];
                plane += zone(a * Degree, b * Degree, first,
                    Between(h * vertical.Length + v, (b - a) / (vertical[v + 1] - vertical[v])));
            }
            total += plane * Around(h);
        }
        return total;
    }

    // Half the sectors on both sides of a plane, in radians.
    private double Around(int h)
    {
        if (horizontal.Length == 1)
        {
            return 2 * Math.PI;
        }
        var before = h > 0 ? horizontal[h] - horizontal[h - 1] : 0;
        var after = h + 1 < horizontal.Length ? horizontal[h + 1] - horizontal[h] : 0;
        return (before + after) / 2 * Degree;
    }

    private static double Zonal(double a, double b, double first, double last) => (first + last) / 2 * (Math.Cos(a) - Math.Cos(b));

    // The integral of a straight line between two angles times the sine.
    private static double Exact(double a, double b, double first, double last)
    {
        var slope = (last - first) / (b - a);
        return first * Math.Cos(a) - last * Math.Cos(b) + slope * (Math.Sin(b) - Math.Sin(a));
    }
}
