namespace Runnel.Engine.Light;

/// <summary>A level bed seen from above, its long side along x, its corner at the origin.</summary>
/// <param name="Length">Length, m, from 0.05 to 100.</param>
/// <param name="Width">Width, m, from 0.05 to 100.</param>
public sealed record BedOutline(double Length, double Width)
{
    internal const double MinSide = 0.05;
    internal const double MaxSide = 100;

    public double Length { get; } = Range.Within(Length, MinSide, MaxSide);

    public double Width { get; } = Range.Within(Width, MinSide, MaxSide);

    /// <summary>Area, m².</summary>
    public double Area => Length * Width;
}

/// <summary>Where a lamp hangs: the foot of its middle.</summary>
/// <param name="X">Distance from the bed's corner along its length, m.</param>
/// <param name="Y">Distance from the bed's corner across, m.</param>
/// <param name="Turned">True if the lamp's own length lies across the bed.</param>
public readonly record struct LampSpot(double X, double Y, bool Turned = false);

/// <summary>Where lamps hang when a plan says only how many.</summary>
public static class LampPlacement
{
    internal const int MaxLamps = 1000;

    /// <summary>What a row more or less even costs against squares that are less square: small enough that three rows of 2, 1, 2 beat one of 5.</summary>
    private const double UnevenCost = 0.25;

    /// <summary>An even spread: every lamp in the middle of its own share of the bed, shares as square as the count allows.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="count">How many, from 1 to 1000.</param>
    /// <returns>Their places, symmetric about both middle lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside that range.</exception>
    /// <remarks>Rows run along the bed at (j + ½) W/r; a row of n lamps has them at (i + ½) L/n. Rows differ by one lamp at most, and the
    /// fuller rows lie outermost or in the middle, so that both halves are alike. Source: common practice, no source. Not for: lamps
    /// hung closer at the edges, which makes a bed more even.</remarks>
    public static IReadOnlyList<LampSpot> Even(BedOutline bed, int count)
    {
        ArgumentNullException.ThrowIfNull(bed);
        Range.Within(count, 1, MaxLamps);
        var (best, least) = (1, double.PositiveInfinity);
        for (var rows = 1; rows <= count; rows++)
        {
            var uneven = count % rows != 0;
            if (uneven && rows % 2 == 0 && count % 2 == 1)
            {
                continue;
            }
            var cost = Math.Abs(Math.Log(bed.Length * rows / count / (bed.Width / rows))) + (uneven ? UnevenCost : 0);
            if (cost < least - 1e-9)
            {
                (best, least) = (rows, cost);
            }
        }
        return Rows(bed, Spread(count, best));
    }

    /// <summary>Rows along the bed, evenly spaced, each with its number of lamps.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="perRow">How many lamps in each row, 1 or more; 1000 together at most.</param>
    /// <param name="turned">True if the lamps' own length lies across the bed.</param>
    /// <exception cref="ArgumentException">No row, or an empty one, or too many lamps.</exception>
    public static IReadOnlyList<LampSpot> Rows(BedOutline bed, IReadOnlyList<int> perRow, bool turned = false)
    {
        ArgumentNullException.ThrowIfNull(bed);
        ArgumentNullException.ThrowIfNull(perRow);
        if (perRow.Count is 0 or > MaxLamps || perRow.Any(n => n is < 1 or > MaxLamps) || perRow.Sum() > MaxLamps)
        {
            throw new ArgumentException($"rows need 1 to {MaxLamps} lamps together and none may be empty", nameof(perRow));
        }
        return [.. perRow.SelectMany((n, row) => Enumerable.Range(0, n)
            .Select(i => new LampSpot((i + 0.5) * bed.Length / n, (row + 0.5) * bed.Width / perRow.Count, turned)))];
    }

    private static int[] Spread(int count, int rows)
    {
        var each = Enumerable.Repeat(count / rows, rows).ToArray();
        var left = count % rows;
        if (left % 2 == 1)
        {
            each[rows / 2]++;
        }
        for (var i = 0; i < left / 2; i++)
        {
            each[i]++;
            each[^(i + 1)]++;
        }
        return each;
    }
}
