using Runnel.Engine.Light;

namespace Runnel.Files.Photometry;

/// <summary>Reads LM-63 text of the editions 1986 to 2019: heading, keywords, tilt, then numbers to the end.</summary>
internal sealed class Lm63Reader
{
    private const double Foot = 0.3048;
    private const int MostAngles = 2000;
    private const string TenNumbers = "number of lamps, lumens of each, multiplier, counts of vertical and horizontal angles, type, units, width, length, height";
    private static readonly string[] Required = ["TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"];

    private readonly Faults faults;
    private readonly Func<string, string?> readBeside;
    private readonly IReadOnlyList<string> lines;

    private Lm63Reader(string text, Faults faults, Func<string, string?> readBeside) =>
        (lines, this.faults, this.readBeside) = (Lines(text), faults, readBeside);

    public static MeasuredLamp? Read(string text, Faults faults, Func<string, string?> readBeside)
    {
        if (text.Length > PhotometryFile.LongestText)
        {
            faults.Error(1, 1, "", "", $"the text has {text.Length:N0} characters, more than a photometric file may have", "check that this is the right file");
            return null;
        }
        return new Lm63Reader(text, faults, readBeside).Read();
    }

    private MeasuredLamp? Read()
    {
        var tiltLine = -1;
        for (var i = 0; i < lines.Count && tiltLine < 0; i++)
        {
            tiltLine = TiltOf(lines[i]) is null ? -1 : i;
        }
        var edition = Edition();
        var keywords = Keywords(edition, tiltLine < 0 ? Math.Min(lines.Count, 200) : tiltLine);
        if (tiltLine < 0)
        {
            faults.Error(Math.Max(1, lines.Count), 1, "TILT", "", "there is no line TILT=, so this is no LM-63 file", "a line TILT=NONE between the keywords and the numbers");
            return null;
        }
        var numbers = new Lm63Numbers(lines, tiltLine + 1, faults);
        var tilt = Tilt(TiltOf(lines[tiltLine])!, tiltLine + 1, numbers);
        return Body(numbers, edition, keywords, tilt);
    }

    private Lm63Edition Edition()
    {
        var first = lines.Count > 0 ? lines[0].Trim().TrimStart('\uFEFF', 'ï', '»', '¿') : "";
        if (!first.StartsWith("IES", StringComparison.OrdinalIgnoreCase))
        {
            return Lm63Edition.Y1986;
        }
        var year = new string([.. first.Where(char.IsAsciiDigit)]) switch
        {
            "86" or "631986" => Lm63Edition.Y1986,
            "91" or "631991" => Lm63Edition.Y1991,
            "95" or "631995" => Lm63Edition.Y1995,
            "2002" or "02" or "632002" or "6302" => Lm63Edition.Y2002,
            "2019" or "632019" or "6319" => Lm63Edition.Y2019,
            _ => (Lm63Edition?)null,
        };
        if (year is null)
        {
            faults.Error(1, 1, "heading", first, "no edition of LM-63 that is known here", "IESNA91, IESNA:LM-63-1995, IESNA:LM-63-2002 or IES:LM-63-2019; files of 1986 have no such line");
        }
        return year ?? Lm63Edition.Y2002;
    }

    private List<(string Name, string Text)> Keywords(Lm63Edition edition, int end)
    {
        var found = new List<(string Name, string Text)>();
        for (var i = edition == Lm63Edition.Y1986 && !lines.FirstOrDefault("").TrimStart().StartsWith("IES", StringComparison.OrdinalIgnoreCase) ? 0 : 1; i < end; i++)
        {
            var text = lines[i].Trim();
            if (!text.StartsWith('['))
            {
                if (text.Length > 0)
                {
                    found.Add(("", text));
                }
                continue;
            }
            var close = text.IndexOf(']', StringComparison.Ordinal);
            if (close < 0)
            {
                faults.Error(i + 1, 1, "keyword", text, "a keyword is not closed", "[NAME] and then its text");
                continue;
            }
            var (name, rest) = (text[1..close].Trim().ToUpperInvariant(), text[(close + 1)..].Trim());
            if (name == "MORE" && found.Count > 0)
            {
                found[^1] = (found[^1].Name, $"{found[^1].Text} {rest}".Trim());
            }
            else
            {
                found.Add((name, rest));
            }
        }
        if (edition >= Lm63Edition.Y2002)
        {
            foreach (var name in Required.Where(r => found.TrueForAll(k => k.Name != r)))
            {
                faults.Remark(1, "keyword", "", $"[{name}] is missing, which this edition asks for", $"[{name}] and its text");
            }
        }
        return found;
    }

    private static string? TiltOf(string line)
    {
        var text = line.Trim();
        if (!text.StartsWith("TILT", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }
        var rest = text[4..].TrimStart();
        return rest.StartsWith('=') ? rest[1..].Trim() : null;
    }

    private LampTilt? Tilt(string told, int line, Lm63Numbers numbers)
    {
        if (told.Equals("NONE", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }
        if (told.Equals("INCLUDE", StringComparison.OrdinalIgnoreCase))
        {
            return TiltTable(numbers);
        }
        if (told.Length == 0 || told.AsSpan().IndexOfAny("/\\:\0") >= 0 || told.Contains("..", StringComparison.Ordinal))
        {
            faults.Error(line, 1, "TILT", told, "this is no plain file name", "TILT=NONE, TILT=INCLUDE or the name of a file in the same folder");
            return null;
        }
        if (readBeside(told) is not { } text || text.Length > PhotometryFile.LongestText)
        {
            faults.Error(line, 1, "TILT", told, "there is no such file beside this one that can be read", "put it there, or TILT=NONE for a lamp that hangs straight");
            return null;
        }
        return TiltTable(new(Lines(text), 0, faults, told));
    }

    private LampTilt? TiltTable(Lm63Numbers numbers)
    {
        var geometry = Whole(numbers.Next("tilt: geometry"), "tilt: geometry", 1, 3);
        if (Whole(numbers.Next("tilt: number of pairs"), "tilt: number of pairs", 1, MostAngles) is not { } pairs)
        {
            return null;
        }
        var angles = numbers.Next(pairs, i => $"tilt: angle {i + 1} of {pairs}");
        var factors = numbers.Next(pairs, i => $"tilt: factor {i + 1} of {pairs}");
        Rising(angles, "tilt: angle");
        foreach (var factor in factors.Where(f => f.Value < 0))
        {
            faults.Error(factor, "tilt: factor", "below nothing", "0 or more");
        }
        return faults.Any || geometry is null ? null : new(geometry.Value, [.. angles.Select(a => a.Value)], [.. factors.Select(f => f.Value)]);
    }

    private MeasuredLamp? Body(Lm63Numbers numbers, Lm63Edition edition, List<(string Name, string Text)> keywords, LampTilt? tilt)
    {
        string[] names =
        [
            "number of lamps", "lumens of each lamp", "multiplier", "number of vertical angles", "number of horizontal angles", "photometric type", "units",
            "width", "length", "height", "ballast factor", "ballast-lamp factor", "watts",
        ];
        var head = numbers.Next(names.Length, i => names[i]);
        if (head.Count < names.Length)
        {
            return null;
        }
        var lamps = Whole(head[0], names[0], 1, 10000);
        var lumens = head[1].Value;
        if (!(lumens > 0) && lumens != -1)
        {
            Wrong(head[1], names[1], "no lumens", "more than 0, or -1 if the lamp was measured as a whole");
        }
        Positive(head[2], names[2]);
        var verticals = Whole(head[3], names[3], 2, MostAngles);
        var horizontals = Whole(head[4], names[4], 1, MostAngles);
        Kind(head[5]);
        var units = Whole(head[6], names[6], 1, 2, "1 for feet or 2 for metres");
        Positive(head[10], names[10]);
        Positive(head[11], names[11]);
        if (head[12].Value < 0)
        {
            Wrong(head[12], names[12], "below nothing", "0 or more");
        }
        if (verticals is not { } v || horizontals is not { } h)
        {
            return null;
        }
        if ((long)v * h > numbers.MostLeft)
        {
            faults.Error(head[4], names[4], $"{v} × {h} intensities are announced, more than the rest of the file can hold", $"the counts stand in the line of {TenNumbers}");
            return null;
        }
        var down = numbers.Next(v, i => $"vertical angle {i + 1} of {v}");
        var around = numbers.Next(h, i => $"horizontal angle {i + 1} of {h}");
        var candelas = numbers.Next(v * h, i => $"intensity {i % v + 1} of {v} in plane {i / v + 1} of {h}");
        if (down.Count < v || around.Count < h || candelas.Count < v * h)
        {
            return null;
        }
        Verticals(down);
        Horizontals(around);
        foreach (var token in candelas.Where(c => c.Value < 0))
        {
            faults.Error(token, "intensity", "below nothing", "0 or more");
        }
        if (numbers.Peek() is { } more)
        {
            faults.Error(more, "after the table", $"the file goes on after {v} × {h} intensities", $"check the counts in the line of {TenNumbers}");
        }
        // From 2002 on the place of the ballast-lamp factor is kept for other use.
        var factor = head[2].Value * head[10].Value * (edition < Lm63Edition.Y2002 ? head[11].Value : 1);
        double[] scaled = [.. candelas.Select(c => c.Value * factor)];
        if (!faults.Any && !(scaled.Sum() < 1e15))
        {
            faults.Error(head[2], names[2], "the intensities become greater than any lamp's", "check multiplier and factors");
        }
        if (faults.Any || lamps is null || units is null)
        {
            return null;
        }
        var metre = units == 1 ? Foot : 1;
        var table = IntensityTable.Expand([.. down.Select(t => t.Value)], [.. around.Select(t => t.Value)], scaled);
        return new(edition, keywords, lamps.Value, lumens == -1 ? null : lumens, factor, head[12].Value,
            Math.Abs(head[7].Value) * metre, Math.Abs(head[8].Value) * metre, Math.Abs(head[9].Value) * metre,
            head[7].Value < 0 || head[8].Value < 0, table, tilt);
    }

    private void Kind(Token token)
    {
        if (token.Value is 2 or 3)
        {
            faults.Error(token, "photometric type", $"type {(token.Value == 2 ? "B" : "A")}, as floodlights and headlamps are measured, is not read here",
                "1: a file of type C of the same lamp, which its maker can give");
        }
        else
        {
            Whole(token, "photometric type", 1, 1, "1 for type C");
        }
    }

    private void Verticals(List<Token> angles)
    {
        Rising(angles, "vertical angle");
        if (angles[0].Value is not (0 or 90))
        {
            Wrong(angles[0], "first vertical angle", "type C begins straight down or level", "0 or 90");
        }
        if (angles[^1].Value is not (90 or 180))
        {
            Wrong(angles[^1], "last vertical angle", "type C ends level or straight up", "90 or 180");
        }
    }

    private void Horizontals(List<Token> angles)
    {
        Rising(angles, "horizontal angle");
        var (first, last) = (angles[0].Value, angles[^1].Value);
        if (angles.Count > 1 && first == 90 && last == 270)
        {
            if (!angles.Exists(a => a.Value == 180))
            {
                Wrong(angles[^1], "horizontal angles", "planes from 90 to 270 without one at 180", "a plane at 180");
            }
            return;
        }
        if (first != 0)
        {
            Wrong(angles[0], "first horizontal angle", "the first plane", "0");
        }
        if (angles.Count > 1 && last is not (90 or 180 or (> 180 and <= 360)))
        {
            Wrong(angles[^1], "last horizontal angle", "the last plane tells the symmetry", "0 alone, or 90, 180 or 360");
        }
    }

    private void Rising(List<Token> angles, string where)
    {
        for (var i = 1; i < angles.Count; i++)
        {
            if (angles[i].Value <= angles[i - 1].Value)
            {
                faults.Error(angles[i], where, $"does not rise above the {angles[i - 1].Text} before it", "angles in rising order, none twice");
            }
        }
    }

    private int? Whole(Token? token, string where, int least, int most, string? mend = null)
    {
        if (token is not { } read || double.IsNaN(read.Value))
        {
            return null;
        }
        if (read.Value != Math.Floor(read.Value) || read.Value < least || read.Value > most)
        {
            Wrong(read, where, "not possible here", mend ?? $"a whole number from {least} to {most}");
            return null;
        }
        return (int)read.Value;
    }

    private void Positive(Token token, string where)
    {
        if (token.Value <= 0)
        {
            Wrong(token, where, "a factor of nothing or less", "more than 0, mostly 1");
        }
    }

    private void Wrong(Token token, string where, string problem, string mend)
    {
        if (!double.IsNaN(token.Value))
        {
            faults.Error(token, where, problem, mend);
        }
    }

    private static string[] Lines(string text) => text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None);
}
