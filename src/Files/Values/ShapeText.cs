using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Errors;

namespace Runnel.Files.Values;

/// <summary>Reads shapes and sizes: "box 110 x 70 x 32 cm", "drum 55 gal upright", "30 mm EPS", "3/4 in hose", "2.6 m at 0 L/h".</summary>
/// <remarks>Each size gets the origin of the whole scalar with its own name behind #: they are drawn apart and edited together.</remarks>
internal static class ShapeText
{
    private const string ShapeHelp = "write it like box 110 cm x 70 cm x 32 cm, round 120 cm x 80 cm, drum 208 L upright, drum 208 L lengthwise, tote 1000 L or pipe 110 mm x 2 m";

    private static readonly string[] ShapeWords = ["box", "round", "drum", "tote", "pipe"];

    public static bool TryShape(string text, ValueContext context, Origin origin, out Shape? shape, out Trouble? trouble)
    {
        shape = null;
        var words = text.Trim().Split(' ', 2, StringSplitOptions.RemoveEmptyEntries);
        var rest = words.Length > 1 ? words[1].Trim() : "";
        switch (words.Length > 0 ? words[0].ToLowerInvariant() : "")
        {
            case "box" when Sizes(rest, 3, ["length", "width", "height"], context, origin, out var s, out trouble):
                shape = new BoxShape(text.Trim(), s[0], s[1], s[2]);
                return true;
            case "round" when Sizes(rest, 2, ["diameter", "height"], context, origin, out var s, out trouble):
                shape = new RoundShape(text.Trim(), s[0], s[1]);
                return true;
            case "pipe" when Sizes(rest, 2, ["diameter", "length"], context, origin, out var s, out trouble):
                shape = new PipeShape(text.Trim(), s[0], s[1]);
                return true;
            case "tote" when Volume(rest, context, origin, out var volume, out trouble):
                shape = new ToteShape(text.Trim(), volume!);
                return true;
            case "drum":
                var lengthwise = rest.EndsWith("lengthwise", StringComparison.OrdinalIgnoreCase);
                var size = lengthwise ? rest[..^10] : rest.EndsWith("upright", StringComparison.OrdinalIgnoreCase) ? rest[..^7] : rest;
                if (!Volume(size.Trim(), context, origin, out var drum, out trouble))
                {
                    break;
                }
                shape = new DrumShape(text.Trim(), drum!, lengthwise);
                return true;
            case "box" or "round" or "pipe" or "tote":
                Again(words[0].ToLowerInvariant(), rest, context, origin, out trouble);
                break;
            default:
                trouble = new("a shape was expected: box, round, drum, tote or pipe",
                    words.Length > 0 && Nearest.Of(words[0], ShapeWords) is { } near ? $"did you mean {near}?" : ShapeHelp);
                return false;
        }
        trouble = trouble is { Mend.Length: 0 } ? trouble with { Mend = ShapeHelp } : trouble;
        return false;
    }

    public static bool TryExtent(string text, ValueContext context, Origin origin, out Extent? extent, out Trouble? trouble)
    {
        extent = null;
        if (!Sizes(text, 2, ["length", "width"], context, origin, out var s, out trouble))
        {
            trouble = trouble! with { Mend = trouble.Mend.Length > 0 ? trouble.Mend : "write it like 2.4 m x 1.6 m" };
            return false;
        }
        extent = new(s[0], s[1]);
        return true;
    }

    public static bool TryInsulation(string text, ValueContext context, Origin origin, out Insulation? insulation, out Trouble? trouble)
    {
        insulation = null;
        const string Help = "write thickness and kind, like 30 mm EPS; kinds are EPS, XPS, polyiso and fibreglass";
        var space = text.TrimEnd().LastIndexOf(' ');
        if (space < 0)
        {
            trouble = new("a thickness and a kind of insulation were expected", Help);
            return false;
        }
        var kind = text[(space + 1)..].Trim();
        if (!WordText.TryRead(kind.Equals("fiberglass", StringComparison.OrdinalIgnoreCase) ? "fibreglass" : kind, typeof(InsulationKind), out var word, out trouble))
        {
            trouble = trouble! with { Mend = trouble.Mend.Length > 0 ? trouble.Mend : Help };
            return false;
        }
        if (!QuantityText.TryRead(text[..space], new("mm") { Min = 0.1, Max = 1000 }, context, out var thickness, out trouble))
        {
            trouble = trouble! with { Mend = trouble.Mend.Length > 0 ? trouble.Mend : Help };
            return false;
        }
        insulation = new(text.Trim(), thickness.From(Inside(origin, "thickness")), (InsulationKind)word!);
        return true;
    }

    public static bool TryPipeSize(string text, ValueContext context, out PipeSize? size, out Trouble? trouble)
    {
        size = null;
        var plain = text.Trim();
        var space = plain.LastIndexOf(' ');
        while (space > 0)
        {
            if (QuantityText.TryRead(plain[..space], new("mm") { Min = 1, Max = 1000 }, context, out var nominal, out trouble) && nominal.High <= nominal.Low &&
                (char.IsLetter(plain[space - 1]) || plain[space - 1] is '"' or '″' or '”'))
            {
                size = new(plain, nominal.Likely, plain[(space + 1)..].Trim());
                return true;
            }
            space = plain.LastIndexOf(' ', space - 1);
        }
        trouble = new("a nominal size and a material were expected", "write it like 25 mm PVC, 1 in PVC or 3/4 in hose");
        return false;
    }

    public static bool TryCurvePoint(string text, ValueContext context, Origin origin, out CurvePoint? point, out Trouble? trouble)
    {
        point = null;
        var at = text.IndexOf(" at ", StringComparison.OrdinalIgnoreCase);
        if (at < 0)
        {
            trouble = new("a head and a flow were expected", "write it like 2.6 m at 0 L/h");
            return false;
        }
        if (!QuantityText.TryRead(text[..at], new("m") { Min = 0, Max = 200 }, context, out var head, out trouble) ||
            !QuantityText.TryRead(text[(at + 4)..], new("L/h") { Min = 0, Max = 1e7 }, context, out var flow, out trouble))
        {
            return false;
        }
        point = new(head.From(Inside(origin, "head")), flow.From(Inside(origin, "flow")));
        return true;
    }

    /// <summary>The origin of one number among several in one scalar.</summary>
    public static Origin Inside(Origin origin, string name) => origin with { Path = $"{origin.Path}#{name}", Label = $"{origin.Label}: {name}" };

    private static void Again(string word, string rest, ValueContext context, Origin origin, out Trouble? trouble)
    {
        if (word == "tote")
        {
            Volume(rest, context, origin, out _, out trouble);
            return;
        }
        string[] names = word switch { "box" => ["length", "width", "height"], "round" => ["diameter", "height"], _ => ["diameter", "length"] };
        Sizes(rest, names.Length, names, context, origin, out _, out trouble);
    }

    private static bool Volume(string text, ValueContext context, Origin origin, out Estimate? volume, out Trouble? trouble)
    {
        volume = null;
        if (!QuantityText.TryRead(text, new("L") { Min = 1, Max = 100000 }, context, out var quantity, out trouble))
        {
            return false;
        }
        volume = quantity.From(Inside(origin, "volume"));
        return true;
    }

    // Sizes without a unit take the last one's: 110 x 70 x 32 cm.
    private static bool Sizes(string text, int count, ReadOnlySpan<string> names, ValueContext context, Origin origin, out Estimate[] sizes, out Trouble? trouble)
    {
        sizes = new Estimate[count];
        var parts = text.Split(['x', '×', 'X'], StringSplitOptions.TrimEntries);
        if (parts.Length != count)
        {
            trouble = new($"{count} sizes were expected: {string.Join(" x ", names.ToArray())}");
            return false;
        }
        var last = parts[^1].TrimEnd();
        var from = last.Length;
        while (from > 0 && !char.IsAsciiDigit(last[from - 1]) && !"½¼¾".Contains(last[from - 1], StringComparison.Ordinal))
        {
            from--;
        }
        var unit = last[from..].Trim();
        if (unit.Length == 0)
        {
            trouble = new("sizes in what?", "write the unit, as in 110 x 70 x 32 cm");
            return false;
        }
        for (var i = 0; i < count; i++)
        {
            var bare = parts[i].Length > 0 && (char.IsAsciiDigit(parts[i][^1]) || "½¼¾".Contains(parts[i][^1], StringComparison.Ordinal));
            var written = bare ? $"{parts[i]} {unit}" : parts[i];
            if (!QuantityText.TryRead(written, new("cm") { Min = 0.1, Max = 10000 }, context, out var size, out trouble))
            {
                return false;
            }
            sizes[i] = size.From(Inside(origin, names[i]));
        }
        trouble = null;
        return true;
    }
}
