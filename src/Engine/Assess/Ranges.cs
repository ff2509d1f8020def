using Runnel.Engine.Figures;
using Runnel.Engine.Numerics;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Draws all ranges together, computes again and sets low and high of every named figure.</summary>
internal static class Ranges
{
    private const double LowShare = 0.1;
    private const double HighShare = 0.9;

    /// <param name="likely">Figures at the likely values: they get the ranges.</param>
    /// <param name="inputs">Every input that was taken.</param>
    /// <param name="draws">How many draws.</param>
    /// <param name="compute">The figures with inputs at drawn values.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancel">Stops between draws.</param>
    public static void Draw(
        FigureBook likely, IReadOnlyList<Estimate> inputs, int draws, Func<Func<Estimate, double>, FigureBook> compute,
        IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var column = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var input in inputs.Where(i => i.IsRange))
        {
            column.TryAdd(input.From.Path, column.Count);
        }
        if (column.Count == 0)
        {
            return;
        }
        var hypercube = new LatinHypercube(column.Count, draws, Assessor.Seed);
        var drawn = likely.All.ToDictionary(f => f.Id!, _ => new List<double>(draws), StringComparer.Ordinal);
        for (var k = 0; k < draws; k++)
        {
            cancel.ThrowIfCancellationRequested();
            var draw = k;
            var book = compute(e => e.IsRange && column.TryGetValue(e.From.Path, out var c) ? Distributions.At(e, hypercube[c, draw]) : e.Likely);
            foreach (var figure in book.All)
            {
                if (drawn.TryGetValue(figure.Id!, out var values))
                {
                    values.Add(figure.Si);
                }
            }
            progress?.Report((k + 1.0) / draws);
        }
        foreach (var figure in likely.All)
        {
            var values = drawn[figure.Id!];
            if (values.Count == 0)
            {
                continue;
            }
            values.Sort();
            var sorted = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(values);
            var (low, high) = (Distributions.Quantile(sorted, LowShare), Distributions.Quantile(sorted, HighShare));
            // Draws that differ by rounding only are no range.
            if (high - low > 1e-12 * Math.Max(Math.Abs(low), Math.Abs(high)))
            {
                figure.SetRange(Math.Min(low, figure.Si), Math.Max(high, figure.Si));
            }
        }
    }
}
