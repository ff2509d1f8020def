using System.Text;

namespace Runnel.Host.Commands.Print;

/// <summary>Text measured and broken in columns of a terminal.</summary>
internal static class Cells
{
    /// <summary>Columns that a text takes: letters of East Asian scripts take two, combining marks none.</summary>
    public static int Width(string text)
    {
        var width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += Width(rune);
        }
        return width;
    }

    /// <summary>Text from a plan without what could steer a terminal.</summary>
    public static string Clean(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)) : text;

    /// <summary>Breaks a text between words; a word that is too long is cut.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Columns of each line.</param>
    /// <param name="hang">Columns by which lines after the first are set in.</param>
    public static IEnumerable<string> Wrap(string text, int width, int hang = 0)
    {
        width = Math.Max(width, hang + 4);
        var line = new StringBuilder();
        var used = 0;
        var first = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            while (true)
            {
                var room = width - (first ? 0 : hang);
                var gap = used > 0 ? 1 : 0;
                var length = Width(rest);
                if (used + gap + length <= room)
                {
                    line.Append(gap == 1 ? " " : "").Append(rest);
                    used += gap + length;
                    break;
                }
                if (used > 0)
                {
                    yield return Take();
                    continue;
                }
                var cut = Cut(rest, room);
                line.Append(rest.AsSpan(0, cut));
                rest = rest[cut..];
                yield return Take();
            }
        }
        if (used > 0 || first)
        {
            yield return Take();
        }

        string Take()
        {
            var taken = first ? line.ToString() : new string(' ', hang) + line;
            line.Clear();
            (used, first) = (0, false);
            return taken;
        }
    }

    /// <summary>The text on one side of a cell.</summary>
    public static string Pad(string text, int width, bool right)
    {
        var blank = new string(' ', Math.Max(0, width - Width(text)));
        return right ? blank + text : text + blank;
    }

    // A place to cut a long word: after a slash, comma, dot or hyphen if there is one late enough, else at the end of the room.
    private static int Cut(string word, int room)
    {
        var fits = 0;
        var used = 0;
        foreach (var rune in word.EnumerateRunes())
        {
            if (used + Width(rune) > room)
            {
                break;
            }
            used += Width(rune);
            fits += rune.Utf16SequenceLength;
        }
        fits = Math.Max(fits, 1);
        var after = word.LastIndexOfAny(['/', ',', '.', '-', '+'], fits - 1) + 1;
        return after > fits / 2 ? after : fits;
    }

    private static int Width(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        System.Globalization.UnicodeCategory.NonSpacingMark or System.Globalization.UnicodeCategory.EnclosingMark
            or System.Globalization.UnicodeCategory.Format or System.Globalization.UnicodeCategory.Control => 0,
        _ => rune.Value is >= 0x1100 and <= 0x115F or >= 0x2E80 and <= 0xA4CF or >= 0xAC00 and <= 0xD7A3 or >= 0xF900 and <= 0xFAFF
            or >= 0xFE30 and <= 0xFE6F or >= 0xFF00 and <= 0xFF60 or >= 0xFFE0 and <= 0xFFE6 or >= 0x1F300 and <= 0x1FAFF or >= 0x20000 and <= 0x3FFFD
            ? 2
            : 1,
    };
}
