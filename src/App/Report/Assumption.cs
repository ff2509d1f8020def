using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.App.Report;

/// <summary>A value that was taken because the plan does not say.</summary>
/// <param name="Estimate">The value, its range and where it comes from.</param>
/// <param name="OnlyUnderGlass">True if only the comparison without lamps, under glass, uses it.</param>
public sealed record Assumption(Estimate Estimate, bool OnlyUnderGlass)
{
    private const string UnderGlass = ".under-glass";

    /// <summary>All that some figures rest on, each once, in the order in which they come in.</summary>
    public static IReadOnlyList<Assumption> Of(FigureBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var seen = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
        var found = new Dictionary<string, Assumption>(StringComparer.Ordinal);
        // The comparison last: what the plan's own figures use is not its alone.
        foreach (var figure in book.All.OrderBy(IsUnderGlass))
        {
            Collect(figure, IsUnderGlass(figure));
        }
        return [.. found.Values];

        void Collect(Figure at, bool underGlass)
        {
            if (!seen.Add(at))
            {
                return;
            }
            if (at.How is Given { Estimate: { From.Kind: OriginKind.Default } estimate } && !IsCountOfOne(estimate))
            {
                found.TryAdd(estimate.From.Path, new(estimate, underGlass));
            }
            foreach (var parent in at.Parents)
            {
                Collect(parent, underGlass);
            }
        }
    }

    // Naming a pump once says that there is one: no guess.
    private static bool IsCountOfOne(Estimate estimate) => estimate is { Likely: 1, IsRange: false } && estimate.From.Path.EndsWith("/count", StringComparison.Ordinal);

    private static bool IsUnderGlass(Figure figure) => figure.Id!.EndsWith(UnderGlass, StringComparison.Ordinal);
}
