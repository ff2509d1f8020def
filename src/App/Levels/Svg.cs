using System.Globalization;
using System.Text;

namespace Runnel.App.Levels;

/// <summary>Writes SVG as text: elements with attributes, everything from outside escaped.</summary>
internal sealed class Svg
{
    private readonly StringBuilder _text = new();

    public override string ToString() => _text.ToString();

    /// <summary>Opens an element; close it with <see cref="Close"/>.</summary>
    public Svg Open(string name, params ReadOnlySpan<(string Name, object Value)> attributes)
    {
        Start(name, attributes);
        _text.Append('>');
        return this;
    }

    public Svg Close(string name)
    {
        _text.Append("</").Append(name).Append(">\n");
        return this;
    }

    /// <summary>An element without content.</summary>
    public Svg Draw(string name, params ReadOnlySpan<(string Name, object Value)> attributes)
    {
        Start(name, attributes);
        _text.Append("/>\n");
        return this;
    }

    /// <summary>An element that holds text.</summary>
    public Svg Say(string name, string text, params ReadOnlySpan<(string Name, object Value)> attributes)
    {
        Start(name, attributes);
        _text.Append('>').Append(Escape(text));
        return Close(name);
    }

    public static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Text that may stand in XML 1.0: the five marks escaped, what XML forbids left out.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '"':
                    escaped.Append("&quot;");
                    break;
                case '\'':
                    escaped.Append("&#39;");
                    break;
                case '\t' or '\n' or '\r':
                    escaped.Append(' ');
                    break;
                case < 0x20 or 0xFFFE or 0xFFFF:
                    break;
                default:
                    escaped.Append(rune.ToString());
                    break;
            }
        }
        return escaped.ToString();
    }

    private void Start(string name, ReadOnlySpan<(string Name, object Value)> attributes)
    {
        _text.Append('<').Append(name);
        foreach (var (key, value) in attributes)
        {
            _text.Append(' ').Append(key).Append("=\"").Append(value is double number ? Number(number) : Escape(value.ToString() ?? "")).Append('"');
        }
    }
}
