using System.Text;

namespace Runnel.Host.Commands.Print;

/// <summary>A page of lines and tables that never runs over the width of the terminal.</summary>
internal sealed class Sheet(Terminal terminal)
{
    private readonly StringBuilder _text = new();

    public int Width => terminal.Width;

    /// <summary>An empty line; two in a row are one.</summary>
    public void Gap()
    {
        if (_text.Length > 0 && !(_text.Length > 1 && _text[^1] == '\n' && _text[^2] == '\n'))
        {
            _text.Append('\n');
        }
    }

    /// <summary>The first line of a page, and what the grower wants to remember.</summary>
    public void Title(string text, string? note = null)
    {
        Say(text, Ink.Strong);
        if (!string.IsNullOrWhiteSpace(note))
        {
            Say(note);
        }
    }

    /// <summary>The heading of a section.</summary>
    public void Heading(string text)
    {
        Gap();
        Say(text.ToUpperInvariant(), Ink.Strong);
    }

    /// <summary>A paragraph.</summary>
    /// <param name="text">The text.</param>
    /// <param name="ink">How it is shown.</param>
    /// <param name="indent">Columns by which all lines are set in.</param>
    /// <param name="hang">Columns by which lines after the first are set in further.</param>
    public void Say(string text, Ink ink = Ink.Plain, int indent = 0, int hang = 0)
    {
        foreach (var line in Cells.Wrap(Cells.Clean(text), Width - indent, hang))
        {
            Line(new string(' ', indent) + line, ink);
        }
    }

    /// <summary>A paragraph after a word in a column of its own: "do  Cover the tank."</summary>
    public void Say(string word, string text, int indent, int column, Ink wordInk = Ink.Quiet)
    {
        var first = true;
        foreach (var line in Cells.Wrap(Cells.Clean(text), Width - indent - column))
        {
            _text.Append(' ', indent).Append(Coloured(Cells.Pad(first ? word : "", column, right: false), wordInk)).Append(line).Append('\n');
            first = false;
        }
    }

    /// <summary>A table.</summary>
    public void Add(Table table)
    {
        foreach (var (text, ink) in table.Lines(Width))
        {
            Line(text, ink);
        }
    }

    /// <summary>What to type next.</summary>
    public void Next(string command, string why)
    {
        Gap();
        Say($"Next: {command}", Ink.Strong, hang: 2);
        Say(why, Ink.Quiet, indent: 6);
    }

    /// <summary>Writes the page.</summary>
    public void Print() => terminal.Out.Write(_text);

    private void Line(string text, Ink ink) => _text.Append(Coloured(text.TrimEnd(), ink)).Append('\n');

    private string Coloured(string text, Ink ink)
    {
        if (!terminal.Colour || ink == Ink.Plain || text.Length == 0)
        {
            return text;
        }
        var code = ink switch
        {
            Ink.Strong => "1",
            Ink.Quiet => "2",
            Ink.Grave => "1;31",
            Ink.Warning => "33",
            Ink.Good => "32",
            _ => "0",
        };
        return $"\u001b[{code}m{text}\u001b[0m";
    }
}
