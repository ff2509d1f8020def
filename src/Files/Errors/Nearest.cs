using Runnel.Engine.Assess;

namespace Runnel.Files.Errors;

/// <summary>Finds the known name that a misspelt one was meant to be.</summary>
internal static class Nearest
{
    private const int LongestName = 80;

    /// <summary>The nearest of some names, or null when none is near.</summary>
    public static string? Of(string written, IEnumerable<string> known)
    {
        var text = written.Trim().ToLowerInvariant();
        if (text.Length is 0 or > LongestName)
        {
            return null;
        }
        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var candidate = name.ToLowerInvariant();
            var distance = Same(candidate, text) ? 0 : Distance(text, candidate);
            if (distance > Math.Max(1, Math.Max(text.Length, candidate.Length) / 3))
            {
                continue;
            }
            // Among equals, letters swapped are likelier than another letter.
            var rank = 2 * distance + (HasLettersOf(candidate, text) ? 0 : 1);
            if (rank < least)
            {
                (best, least) = (name, rank);
            }
        }
        return best;
    }

    /// <summary>"did you mean X?", or a list of what is known.</summary>
    public static string Mend(string written, IReadOnlyCollection<string> known, string otherwise)
    {
        if (Of(written, known) is { } near)
        {
            return $"did you mean {near}?";
        }
        return known.Count is > 0 and <= 40 ? $"{otherwise}: {string.Join(", ", known)}" : otherwise;
    }

    private static bool HasLettersOf(string a, string b) => a.Length == b.Length && a.Order().SequenceEqual(b.Order());

    private static bool Same(string a, string b) => Squeeze(a) == Squeeze(b);

    private static string Squeeze(string text) =>
        text.Replace(" ", "", StringComparison.Ordinal).Replace("_", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);

    private static int Distance(string a, string b) =>
        Math.Abs(a.Length - b.Length) > 12 || b.Length > LongestName ? int.MaxValue : Names.Distance(a, b);
}
