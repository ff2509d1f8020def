using Runnel.Engine.Quantities;

namespace Runnel.Files.Values;

/// <summary>A number with its unit, if one was written: "8 ft 2 in", "2 x 7 EUR", "€4".</summary>
internal readonly record struct Piece(double Value, Unit? Unit)
{
    public static bool TryRead(string text, Unit? asked, Wanted wanted, ValueContext context, out Piece piece, out Trouble? trouble)
    {
        piece = default;
        var rest = text.AsSpan().Trim();
        var sign = 1;
        string? before = null;
        if (rest.Length > 0 && rest[0] is '-' or '−' or '+')
        {
            sign = rest[0] == '+' ? 1 : -1;
            rest = rest[1..].TrimStart();
        }
        if (NumberText.Length(rest) == 0)
        {
            before = Before(rest);
            rest = before is null ? rest : rest[before.Length..].TrimStart();
        }
        if (!Number(ref rest, out var value, out trouble))
        {
            return false;
        }
        while (rest.Length > 1 && rest[0] is 'x' or '×' or '*' && NumberText.Length(rest[1..].TrimStart()) > 0)
        {
            rest = rest[1..].TrimStart();
            if (!Number(ref rest, out var times, out trouble))
            {
                return false;
            }
            value *= times;
        }
        var unitText = TakeUnit(ref rest);
        if (before is not null)
        {
            unitText = $"{before}{(unitText.StartsWith('/') ? "" : " ")}{unitText}".Trim();
        }
        if (unitText.Length == 0)
        {
            piece = new(sign * value, null);
            return true;
        }
        if (Resolve(unitText, asked, wanted, context, ref sign, out trouble) is not { } unit)
        {
            return false;
        }
        if (rest.Length == 0)
        {
            piece = new(sign * value, unit);
            return true;
        }
        return Compound(rest, sign, value, unit, context, out piece, out trouble);
    }

    // 8 ft 2 in, 5 lb 3 oz, 1 h 30 min: the second unit is a smaller one of the same kind.
    private static bool Compound(ReadOnlySpan<char> rest, int sign, double value, Unit unit, ValueContext context, out Piece piece, out Trouble? trouble)
    {
        piece = default;
        if (!Number(ref rest, out var more, out trouble))
        {
            return false;
        }
        var text = TakeUnit(ref rest);
        if (text.Length == 0 && unit == Units.Foot)
        {
            text = "in";
        }
        var second = text.Length == 0 ? null : UnitText.Read(text, context, out trouble);
        if (second is null || rest.Length > 0 || second.Dimension != unit.Dimension || second.Factor >= unit.Factor || unit.Dimension.IsPoint)
        {
            trouble ??= new("two numbers stand here that do not belong together");
            return false;
        }
        piece = new(sign * (value + more * (second.Factor / unit.Factor)), unit);
        return true;
    }

    private static bool Number(ref ReadOnlySpan<char> rest, out double value, out Trouble? trouble)
    {
        var length = NumberText.Length(rest);
        value = 0;
        if (length == 0)
        {
            trouble = new("a number was expected");
            return false;
        }
        if (!NumberText.TryRead(rest[..length].ToString(), out value, out trouble))
        {
            return false;
        }
        rest = rest[length..].TrimStart();
        return true;
    }

    // A unit runs on until a number begins a word of its own; digits inside a word (m3, CaCO3) belong to it.
    private static string TakeUnit(ref ReadOnlySpan<char> rest)
    {
        var i = 0;
        while (i < rest.Length && !(char.IsAsciiDigit(rest[i]) && i > 0 && rest[i - 1] is ' ' or '\'' or '"' or '’' or '′'))
        {
            i++;
        }
        var unit = rest[..i].Trim().ToString();
        rest = rest[i..];
        return unit;
    }

    private static string? Before(ReadOnlySpan<char> rest)
    {
        if (rest.Length > 1 && rest[0] is '$' or '€' or '£')
        {
            return rest[..1].ToString();
        }
        return rest.Length > 4 && rest[3] == ' ' && char.IsAsciiLetterUpper(rest[0]) && char.IsAsciiLetterUpper(rest[1]) && char.IsAsciiLetterUpper(rest[2])
            ? rest[..3].ToString()
            : null;
    }

    private static Unit? Resolve(string text, Unit? asked, Wanted wanted, ValueContext context, ref int sign, out Trouble? trouble)
    {
        trouble = null;
        if (asked == UnitText.Degree)
        {
            switch (text.Replace("°", "", StringComparison.Ordinal).Trim().ToUpperInvariant())
            {
                case "S" or "SOUTH" or "W" or "WEST":
                    sign = -sign;
                    return asked;
                case "" or "N" or "NORTH" or "E" or "EAST" or "DEG" or "DEGREES":
                    return asked;
            }
        }
        if (asked is { Dimension.Money: > 0 } && !text.StartsWith('/') && (text.StartsWith("per ", StringComparison.Ordinal) || text.StartsWith("a ", StringComparison.Ordinal) ||
            text.StartsWith("an ", StringComparison.Ordinal)))
        {
            return UnitText.Read($"{context.Currency} {text}", context, out trouble);
        }
        if (asked is not null && asked.Dimension == Dimension.None && IsCounted(text, wanted.Words))
        {
            return Units.One;
        }
        return UnitText.Read(text, context, out trouble);
    }

    // "22 fish" under number of fish, "5 plants" under plants: the thing that is counted.
    private static bool IsCounted(string text, string words) =>
        text is "fish" or "plants" or "lamps" or "pieces" ||
        text.Length > 2 && UnitTable.Find(text) is null && words.Contains(text, StringComparison.OrdinalIgnoreCase);
}
