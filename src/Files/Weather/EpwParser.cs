using System.Globalization;

namespace Runnel.Files.Weather;

/// <summary>Reads the text of a weather file, line by line and once.</summary>
internal sealed class EpwParser(string fileName)
{
    private readonly EpwErrors _errors = new(fileName);
    private readonly EpwFields _fields = new();

    public EpwReading Read(string text)
    {
        if (text.Length > EpwFile.LargestBytes)
        {
            _errors.Add("size", 1, 1, "", "", $"the text has {text.Length:N0} characters, more than a weather file may have",
                $"one year of hours takes about two million; {EpwFile.LargestBytes:N0} are read at most");
            return new(null, _errors.All);
        }
        if (text.Contains('\0', StringComparison.Ordinal))
        {
            _errors.Add("binary", 1, 1, "", "", "this is not a text file", "an EPW file is plain text whose first line begins with LOCATION");
            return new(null, _errors.All);
        }
        var lines = new EpwLines(text);
        var header = new EpwHeader(_errors, _fields);
        if (!header.Read(lines))
        {
            return new(null, _errors.All);
        }
        var rows = new EpwRows(_errors);
        while (lines.Next())
        {
            if (text.AsSpan(lines.Start, lines.End - lines.Start).IsWhiteSpace())
            {
                continue;
            }
            _fields.Split(text, lines.Start, lines.End);
            rows.Read(lines.Number, _fields);
        }
        var leap = rows.Finish(lines.Number);
        var file = _errors.Any ? null : new EpwFilling(_errors, rows.FirstLine).Build(fileName, header, rows, leap);
        if (file is not null)
        {
            EpwSense.Check(file, _errors, rows.FirstLine);
        }
        return _errors.Any ? new(null, _errors.All) : new(file, []);
    }

    /// <summary>A finite number, written the plain way.</summary>
    public static bool Number(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    /// <summary>A whole number; "3.0" is one too.</summary>
    public static bool Whole(ReadOnlySpan<char> text, out int value)
    {
        value = 0;
        if (!Number(text, out var number) || number != Math.Floor(number) || Math.Abs(number) > 1e6)
        {
            return false;
        }
        value = (int)number;
        return true;
    }
}

/// <summary>The lines of a text, whatever ends them.</summary>
internal sealed class EpwLines(string text)
{
    private int _next = text.StartsWith('\uFEFF') ? 1 : 0;

    public string Text => text;

    /// <summary>Number of the line, from 1.</summary>
    public int Number { get; private set; }

    public int Start { get; private set; }

    public int End { get; private set; }

    public bool Next()
    {
        if (_next >= text.Length)
        {
            return false;
        }
        Number++;
        Start = _next;
        var end = text.AsSpan(Start).IndexOfAny('\n', '\r');
        End = end < 0 ? text.Length : Start + end;
        _next = end < 0 ? text.Length : End + (text[End] == '\r' && End + 1 < text.Length && text[End + 1] == '\n' ? 2 : 1);
        return true;
    }
}
