using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>What was taken because nobody said: each value with its span and source, alike ones together.</summary>
internal static class AssumedPart
{
    private const int ShortestShared = 8;

    public static void Print(Sheet sheet, Style style, IEnumerable<Assumption> assumed)
    {
        foreach (var alike in assumed.Select(a => a.Estimate).GroupBy(e => (e.Low, e.Likely, e.High, e.Unit, e.From.Source)))
        {
            foreach (var (shared, names) in Together([.. alike.Select(e => e.From.Label)]))
            {
                var estimate = alike.First();
                var range = estimate.IsRange
                    ? $" ({style.Write(new Amount(estimate.Low, estimate.Unit))} to {style.Write(new Amount(estimate.High, estimate.Unit))})"
                    : "";
                sheet.Say($"{shared}{string.Join(", ", names)}: {style.Write(new Amount(estimate.Likely, estimate.Unit))}{range}", Ink.Plain, 2, 4);
            }
            sheet.Say(alike.Key.Source ?? "no source", Ink.Quiet, 6, 2);
        }
    }

    /// <summary>Labels that begin alike, with what they share said once: "Thickness of the wall, " of tank, sump, bed.</summary>
    private static List<(string Shared, List<string> Names)> Together(List<string> labels)
    {
        var groups = new List<(string Shared, List<string> Names)>();
        while (labels.Count > 0)
        {
            var first = labels[0];
            var shared = labels.Skip(1).Select(l => Shared(first, l)).Where(s => s.Length >= ShortestShared).OrderByDescending(s => s.Length).FirstOrDefault("");
            var alike = shared.Length == 0 ? [first] : labels.Where(l => l.StartsWith(shared, StringComparison.Ordinal)).ToList();
            groups.Add((shared, [.. alike.Select(l => l[shared.Length..])]));
            labels = [.. labels.Where(l => !alike.Contains(l))];
        }
        return groups;
    }

    private static string Shared(string a, string b)
    {
        var length = 0;
        while (length < a.Length && length < b.Length && a[length] == b[length])
        {
            length++;
        }
        // Up to a whole word.
        return a[..(a.LastIndexOf(' ', Math.Max(0, length - 1)) + 1)];
    }
}
