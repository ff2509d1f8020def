using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Errors;

namespace Runnel.Files.Values;

/// <summary>Reads how a vessel empties: "siphon, 32 mm standpipe, 22 cm high", "standpipe with holes, 20 cm high", "none".</summary>
internal static class DrainText
{
    private const string Help = "write it like siphon, 32 mm standpipe, 22 cm high; kinds are siphon, standpipe, standpipe with holes and none";

    public static bool TryRead(string text, ValueContext context, Origin origin, out DrainSpec? drain, out Trouble? trouble)
    {
        drain = null;
        DrainKind? kind = null;
        Estimate? bore = null, height = null;
        foreach (var piece in Pieces(text))
        {
            if (Without(piece, "high") is { } high)
            {
                if (!Once(height is null, "height", out trouble) || !Size(high, "cm", 0, 500, "height", context, origin, out height, out trouble))
                {
                    return false;
                }
            }
            else if (WordText.TryRead(piece, typeof(DrainKind), out var word, out var unknown))
            {
                if (!Once(kind is null, "kind", out trouble))
                {
                    return false;
                }
                kind = (DrainKind)word!;
            }
            else if (piece.Any(char.IsAsciiDigit))
            {
                var pipe = Without(piece, "standpipe");
                if (!Once(bore is null, "bore", out trouble) || !Size(pipe ?? piece, "mm", 3, 500, "bore", context, origin, out bore, out trouble))
                {
                    return false;
                }
                kind ??= pipe is null ? null : DrainKind.Standpipe;
            }
            else
            {
                trouble = unknown! with { Mend = unknown.Mend.Length > 0 ? unknown.Mend : Nearest.Of(piece, ["high"]) is { } near ? $"did you mean {near}?" : Help };
                return false;
            }
        }
        if (kind is null)
        {
            trouble = new("what kind of drain?", Help);
            return false;
        }
        if (kind == DrainKind.None && (bore ?? height) is not null)
        {
            trouble = new("no drain has neither bore nor height", "write none alone, or the kind of drain");
            return false;
        }
        drain = new(text.Trim(), kind.Value, bore, height);
        trouble = null;
        return true;
    }

    // The likely value of a range belongs to the range before it: "20 to 24 cm high, likely 22 cm" and "20 to 24 cm, likely 22 cm high".
    private static List<string> Pieces(string text)
    {
        var pieces = new List<string>();
        foreach (var piece in text.Split(',', StringSplitOptions.TrimEntries))
        {
            if (!piece.StartsWith("likely ", StringComparison.OrdinalIgnoreCase) || pieces.Count == 0)
            {
                pieces.Add(piece);
                continue;
            }
            var (range, end) = Without(pieces[^1], "high") is { } high ? (high, " high") : (pieces[^1], "");
            pieces[^1] = $"{range}, {piece}{end}";
        }
        return pieces;
    }

    private static string? Without(string piece, string word) =>
        piece.EndsWith($" {word}", StringComparison.OrdinalIgnoreCase) ? piece[..^(word.Length + 1)].TrimEnd() : null;

    private static bool Once(bool first, string what, out Trouble? trouble)
    {
        trouble = first ? null : new($"a second {what} stands here", Help);
        return first;
    }

    private static bool Size(string text, string unit, double min, double max, string name, ValueContext context, Origin origin, out Estimate? size, out Trouble? trouble)
    {
        size = null;
        if (!QuantityText.TryRead(text, new(unit) { Min = min, Max = max }, context, out var quantity, out trouble))
        {
            trouble = trouble! with { Mend = trouble.Mend.Length > 0 ? trouble.Mend : Help };
            return false;
        }
        size = quantity.From(ShapeText.Inside(origin, name));
        return true;
    }
}
