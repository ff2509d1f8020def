using System.Globalization;

namespace Runnel.Files.Values;

/// <summary>Reads numbers as people write them: 1234.5, 1,234.5, 1,5, 3/4, 1 1/2, ½.</summary>
internal static class NumberText
{
    private const string Vulgar = "½¼¾⅓⅔⅛⅜⅝⅞";
    private static readonly double[] VulgarValues = [1 / 2.0, 1 / 4.0, 3 / 4.0, 1 / 3.0, 2 / 3.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0];

    /// <summary>Length of the number that begins at a place, 0 if none does.</summary>
    public static int Length(ReadOnlySpan<char> text)
    {
        var i = 0;
        while (i < text.Length && (char.IsAsciiDigit(text[i]) || IsInner(text, i)))
        {
            i++;
        }
        if (i == 0)
        {
            return text.Length > 0 && Vulgar.Contains(text[0], StringComparison.Ordinal) ? 1 : 0;
        }
        if (i < text.Length && Vulgar.Contains(text[i], StringComparison.Ordinal))
        {
            return i + 1;
        }
        if (text[..i].ContainsAnyExceptInRange('0', '9'))
        {
            return Exponent(text, i);
        }
        var fraction = Fraction(text, i);
        if (fraction > 0)
        {
            return fraction;
        }
        if (i < text.Length && text[i] is ' ' or '-')
        {
            var whole = i + 1;
            var over = whole;
            while (over < text.Length && char.IsAsciiDigit(text[over]))
            {
                over++;
            }
            if (over > whole && Fraction(text, over) is var end and > 0)
            {
                return end;
            }
            if (text[i] == ' ' && whole < text.Length && Vulgar.Contains(text[whole], StringComparison.Ordinal))
            {
                return whole + 1;
            }
        }
        return Exponent(text, i);
    }

    /// <summary>The value of a number without sign.</summary>
    public static bool TryRead(string text, out double value, out Trouble? trouble)
    {
        (value, trouble) = (0, null);
        if (text.Length > 40)
        {
            trouble = new("that number is too long");
            return false;
        }
        var vulgar = Vulgar.IndexOf(text[^1], StringComparison.Ordinal);
        if (vulgar >= 0)
        {
            var whole = text[..^1].Trim();
            value = VulgarValues[vulgar];
            if (whole.Length == 0)
            {
                return true;
            }
            if (!TryRead(whole, out var w, out trouble))
            {
                return false;
            }
            value += w;
            return true;
        }
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash >= 0)
        {
            return Ratio(text, slash, out value, out trouble);
        }
        if (!Separators(text, out var plain, out trouble))
        {
            return false;
        }
        if (!double.TryParse(plain, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value) ||
            !double.IsFinite(value))
        {
            trouble = new("that is no number", "write it like 1234.5");
            return false;
        }
        return true;
    }

    private static bool Ratio(string text, int slash, out double value, out Trouble? trouble)
    {
        (value, trouble) = (0, null);
        var space = text.IndexOfAny([' ', '-']);
        var top = text[(space + 1)..slash];
        var whole = space < 0 ? 0 : double.Parse(text[..space].Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        var under = double.Parse(text[(slash + 1)..], CultureInfo.InvariantCulture);
        if (under == 0)
        {
            trouble = new("nothing can be divided by 0", "write a fraction like 3/4");
            return false;
        }
        value = whole + double.Parse(top, CultureInfo.InvariantCulture) / under;
        return true;
    }

    // A comma is a decimal comma or parts thousands; where both readings are sensible, say so rather than guess.
    private static bool Separators(string text, out string plain, out Trouble? trouble)
    {
        trouble = null;
        plain = text.Replace("\u00A0", "", StringComparison.Ordinal).Replace("\u202F", "", StringComparison.Ordinal)
            .Replace("\u2009", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal);
        var commas = plain.Count(c => c == ',');
        var points = plain.Count(c => c == '.');
        if (commas == 0 && points <= 1)
        {
            return true;
        }
        var lastComma = plain.LastIndexOf(',');
        var lastPoint = plain.LastIndexOf('.');
        var decimalMark = (commas, points) switch
        {
            ( > 0, > 0) => lastComma > lastPoint ? ',' : '.',
            ( > 1, 0) or (0, > 1) => ' ',
            _ => ',',
        };
        if (commas == 1 && points == 0 && plain.Length - lastComma - 1 == 3 && lastComma is >= 1 and <= 3 && plain[0] != '0')
        {
            trouble = new("that comma may part thousands or decimals",
                $"write {plain.Replace(",", "", StringComparison.Ordinal)} or {plain.Replace(',', '.')}");
            return false;
        }
        var thousands = decimalMark == ',' ? '.' : ',';
        if (decimalMark == ' ')
        {
            thousands = commas > 0 ? ',' : '.';
        }
        var whole = decimalMark == ' ' ? plain : plain[..plain.LastIndexOf(decimalMark)];
        var groups = whole.Split(thousands);
        var bad = groups.Length > 1 && (groups[0].Length is 0 or > 3 || groups.Skip(1).Any(g => g.Length != 3)) ||
            whole.Contains(decimalMark, StringComparison.Ordinal);
        if (bad)
        {
            trouble = new("commas and points in that number do not fit together", "write it like 1234.5");
            return false;
        }
        var joined = string.Concat(groups);
        plain = decimalMark == ' ' ? joined : $"{joined}.{plain[(plain.LastIndexOf(decimalMark) + 1)..]}";
        return true;
    }

    private static int Exponent(ReadOnlySpan<char> text, int i)
    {
        if (i + 1 >= text.Length || text[i] is not ('e' or 'E'))
        {
            return i;
        }
        var j = i + 1 + (text[i + 1] is '-' or '+' ? 1 : 0);
        var digits = j;
        while (j < text.Length && char.IsAsciiDigit(text[j]))
        {
            j++;
        }
        return j > digits && (j == text.Length || !char.IsLetter(text[j])) ? j : i;
    }

    private static int Fraction(ReadOnlySpan<char> text, int i)
    {
        if (i >= text.Length || text[i] != '/')
        {
            return 0;
        }
        var j = i + 1;
        while (j < text.Length && char.IsAsciiDigit(text[j]))
        {
            j++;
        }
        return j > i + 1 && (j == text.Length || text[j] is not ('.' or ',')) ? j : 0;
    }

    private static bool IsInner(ReadOnlySpan<char> text, int i) =>
        text[i] is '.' or ',' or '\u00A0' or '\u202F' or '\u2009' or '\'' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]) &&
        (i > 0 || text[i] == '.') && (text[i] != '\'' || IsThousands(text, i));

    // 1'000 is a thousand; 8'2 is feet and inches.
    private static bool IsThousands(ReadOnlySpan<char> text, int i) =>
        i + 3 < text.Length && char.IsAsciiDigit(text[i + 2]) && char.IsAsciiDigit(text[i + 3]) && (i + 4 == text.Length || !char.IsAsciiDigit(text[i + 4]));
}
