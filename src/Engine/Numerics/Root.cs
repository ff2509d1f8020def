namespace Runnel.Engine.Numerics;

/// <summary>Where a function is nought.</summary>
internal static class Root
{
    /// <summary>The root of a function that never falls between two ends, to the last bits of a double.</summary>
    /// <param name="function">A function that never falls: at most nought at <paramref name="low"/>, at least nought at <paramref name="high"/>.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <returns>The root; an end where the function does not change sign within.</returns>
    /// <remarks>Regula falsi in the Illinois form, by halving wherever that is faster: the bracket always closes.</remarks>
    public static double Rising(Func<double, double> function, double low, double high)
    {
        var (atLow, atHigh) = (function(low), function(high));
        if (atLow >= 0)
        {
            return low;
        }
        if (atHigh <= 0)
        {
            return high;
        }
        var side = 0;
        for (var i = 0; i < 200 && high - low > 4e-16 * Math.Max(Math.Abs(low), Math.Abs(high)); i++)
        {
            var middle = i % 3 == 2 ? (low + high) / 2 : (low * atHigh - high * atLow) / (atHigh - atLow);
            if (!(middle > low && middle < high))
            {
                middle = (low + high) / 2;
            }
            var at = function(middle);
            if (at == 0)
            {
                return middle;
            }
            if (at < 0)
            {
                (low, atLow) = (middle, at);
                atHigh = side == -1 ? atHigh / 2 : atHigh;
                side = -1;
            }
            else
            {
                (high, atHigh) = (middle, at);
                atLow = side == 1 ? atLow / 2 : atLow;
                side = 1;
            }
        }
        return (low + high) / 2;
    }
}
