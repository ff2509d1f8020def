using System.Collections.Concurrent;
using System.Text;
using Runnel.Files.Errors;

namespace Runnel.Files.Values;

/// <summary>Reads and writes the words of a choice: "fish tank", "white LED".</summary>
internal static class WordText
{
    private static readonly ConcurrentDictionary<Type, (string Word, object Value)[]> Known = new();

    /// <summary>Every word of a choice with its value.</summary>
    public static IReadOnlyList<(string Word, object Value)> Of(Type choice) => Known.GetOrAdd(choice, static t =>
        [.. Enum.GetValues(t).Cast<object>().Select(v => (Words(v.ToString()!), v))]);

    public static string Write(object value) => Of(value.GetType()).First(w => w.Value.Equals(value)).Word;

    public static bool TryRead(string text, Type choice, out object? value, out Trouble? trouble)
    {
        var plain = Plain(text);
        foreach (var (word, known) in Of(choice))
        {
            if (Plain(word) == plain)
            {
                (value, trouble) = (known, null);
                return true;
            }
        }
        value = null;
        var words = Of(choice).Select(w => w.Word).ToList();
        trouble = new($"one of these words was expected: {string.Join(", ", words)}",
            Nearest.Of(text, words) is { } near ? $"did you mean {near}?" : "");
        return false;
    }

    private static string Plain(string text) => text.Trim().Replace('-', ' ').Replace('_', ' ').ToLowerInvariant();

    private static string Words(string name)
    {
        var words = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && words.Length > 0)
            {
                words.Append(' ');
            }
            words.Append(char.ToLowerInvariant(c));
        }
        // Abbreviations and a compound, as the trade writes them.
        return words.ToString() switch
        {
            "eps" => "EPS",
            "xps" => "XPS",
            "c16" => "C16",
            "c24" => "C24",
            "twin wall polycarbonate" => "twin-wall polycarbonate",
            var w when w.EndsWith(" led", StringComparison.Ordinal) => w[..^3] + "LED",
            var w => w,
        };
    }
}
