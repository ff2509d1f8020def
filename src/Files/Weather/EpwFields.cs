namespace Runnel.Files.Weather;

/// <summary>The fields of one line, parted by commas; a comma inside quotation marks parts nothing.</summary>
internal sealed class EpwFields
{
    private readonly List<(int Start, int Length)> _fields = [];
    private string _text = "";
    private int _line;

    /// <summary>True if a quotation mark is never closed.</summary>
    public bool Unclosed { get; private set; }

    public int Count => _fields.Count;

    /// <summary>Splits a line of the text.</summary>
    public void Split(string text, int start, int end)
    {
        (_text, _line, Unclosed) = (text, start, false);
        _fields.Clear();
        var from = start;
        var quoted = false;
        for (var i = start; i < end; i++)
        {
            if (text[i] == '"')
            {
                quoted = !quoted;
            }
            else if (text[i] == ',' && !quoted)
            {
                _fields.Add((from, i - from));
                from = i + 1;
            }
        }
        _fields.Add((from, end - from));
        Unclosed = quoted;
    }

    /// <summary>A field from 1, without blanks and quotation marks around it; empty past the end of the line.</summary>
    public ReadOnlySpan<char> this[int field] =>
        field > _fields.Count ? [] : _text.AsSpan(_fields[field - 1].Start, _fields[field - 1].Length).Trim().Trim('"').Trim();

    /// <summary>Column, from 1, at which a field's text begins.</summary>
    public int Column(int field)
    {
        if (field > _fields.Count)
        {
            var last = _fields[^1];
            return last.Start + last.Length - _line + 1;
        }
        var (start, length) = _fields[field - 1];
        var blanks = length - _text.AsSpan(start, length).TrimStart().Length;
        return start + (blanks == length ? 0 : blanks) - _line + 1;
    }
}
