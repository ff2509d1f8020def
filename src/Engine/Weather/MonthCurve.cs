using Runnel.Engine.Quantities;

namespace Runnel.Engine.Weather;

/// <summary>A curve through the year without steps whose mean over each month is what was asked.</summary>
/// <remarks>Straight lines between the middles of the months, through heights solved for so that the means come out, each hour of the year taken at
/// its middle. Source: after Killworth 1996, Time interpolation of forcing fields in ocean models, Journal of Physical Oceanography 26, 136-143
/// (from memory); here the twelve equations count the true hours of each month.</remarks>
internal static class MonthCurve
{
    private const int PerDay = 24;

    // Which middles an hour lies between never changes.
    private static readonly (int Month, int Next, double Share)[] Places = [.. Enumerable.Range(0, WeatherYear.Hours).Select(Between)];
    private static readonly double[,] Inverse = Invert(Weights());

    /// <summary>Adds the curve whose monthly means are given to 8760 hours.</summary>
    public static void Add(ReadOnlySpan<double> means, Span<double> hours)
    {
        Span<double> heights = stackalloc double[YearCalendar.Months];
        for (var i = 0; i < YearCalendar.Months; i++)
        {
            heights[i] = 0;
            for (var k = 0; k < YearCalendar.Months; k++)
            {
                heights[i] += Inverse[i, k] * means[k];
            }
        }
        for (var h = 0; h < WeatherYear.Hours; h++)
        {
            var (month, next, share) = Places[h];
            hours[h] += heights[month] * (1 - share) + heights[next] * share;
        }
    }

    /// <summary>Mean of each month of 8760 hours.</summary>
    public static void Means(ReadOnlySpan<double> hours, Span<double> means)
    {
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            var sum = 0.0;
            foreach (var value in hours.Slice(YearCalendar.Start[m] * PerDay, YearCalendar.Length[m] * PerDay))
            {
                sum += value;
            }
            means[m] = sum / (YearCalendar.Length[m] * PerDay);
        }
    }

    /// <summary>The months whose middles lie on either side of the middle of an hour, and how far between them it is.</summary>
    private static (int Month, int Next, double Share) Between(int hour)
    {
        var at = hour + 0.5;
        var next = 0;
        while (next < YearCalendar.Months && Middle(next) <= at)
        {
            next++;
        }
        var month = (next + 11) % YearCalendar.Months;
        var from = next == 0 ? Middle(11) - WeatherYear.Hours : Middle(month);
        var to = next == YearCalendar.Months ? Middle(0) + WeatherYear.Hours : Middle(next);
        return (month, next % YearCalendar.Months, (at - from) / (to - from));
    }

    private static double Middle(int month) => (YearCalendar.Start[month] + YearCalendar.Length[month] / 2.0) * PerDay;

    private static double[,] Weights()
    {
        var weights = new double[YearCalendar.Months, YearCalendar.Months];
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            var count = YearCalendar.Length[m] * PerDay;
            for (var h = YearCalendar.Start[m] * PerDay; h < YearCalendar.Start[m] * PerDay + count; h++)
            {
                var (month, next, share) = Places[h];
                weights[m, month] += (1 - share) / count;
                weights[m, next] += share / count;
            }
        }
        return weights;
    }

    // Gauss and Jordan without exchanges: three quarters of each month's weight lie on its own height.
    private static double[,] Invert(double[,] a)
    {
        var n = a.GetLength(0);
        var inverse = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            inverse[i, i] = 1;
        }
        for (var pivot = 0; pivot < n; pivot++)
        {
            var scale = 1 / a[pivot, pivot];
            for (var k = 0; k < n; k++)
            {
                a[pivot, k] *= scale;
                inverse[pivot, k] *= scale;
            }
            for (var row = 0; row < n; row++)
            {
                var factor = row == pivot ? 0 : a[row, pivot];
                for (var k = 0; k < n; k++)
                {
                    a[row, k] -= factor * a[pivot, k];
                    inverse[row, k] -= factor * inverse[pivot, k];
                }
            }
        }
        return inverse;
    }
}
