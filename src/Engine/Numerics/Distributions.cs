using Runnel.Engine.Quantities;

namespace Runnel.Engine.Numerics;

/// <summary>Values at a share of a distribution, and shares of drawn values.</summary>
public static class Distributions
{
    /// <summary>The value of a range that a share of all draws stays under.</summary>
    /// <param name="estimate">A range: a triangle whose peak is its likely value.</param>
    /// <param name="share">From 0 to 1.</param>
    /// <returns>SI value.</returns>
    /// <remarks>Inverse of the triangular distribution: low + √(u (high − low)(likely − low)) below the peak. A range without a likely
    /// value has its peak in the middle. Textbook.</remarks>
    public static double At(Estimate estimate, double share)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var (low, peak, high) = (estimate.Low, estimate.Likely, estimate.High);
        if (high <= low)
        {
            return estimate.Likely;
        }
        var atPeak = (peak - low) / (high - low);
        return share < atPeak
            ? low + Math.Sqrt(share * (high - low) * (peak - low))
            : high - Math.Sqrt((1 - share) * (high - low) * (high - peak));
    }

    /// <summary>The value that a share of sorted draws stays under, between draws by straight line.</summary>
    /// <remarks>Hyndman and Fan 1996, Sample quantiles in statistical packages, definition 7 (from memory).</remarks>
    public static double Quantile(ReadOnlySpan<double> sorted, double share)
    {
        if (sorted.IsEmpty)
        {
            throw new ArgumentException("needs at least one draw", nameof(sorted));
        }
        var position = share * (sorted.Length - 1);
        var below = (int)position;
        return below + 1 < sorted.Length
            ? sorted[below] + (position - below) * (sorted[below + 1] - sorted[below])
            : sorted[^1];
    }
}
