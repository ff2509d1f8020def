namespace Runnel.Files.Values;

/// <summary>The ends of a range as text: "30 to 50 USD, likely 35".</summary>
internal readonly record struct Ends(string Low, string? High, string? Likely)
{
    public static Ends Split(string text)
    {
        string? likely = null;
        var at = text.IndexOf("likely", StringComparison.OrdinalIgnoreCase);
        if (at > 0 && text[at - 1] is ' ' or ',')
        {
            likely = text[(at + 6)..].Trim();
            text = text[..at].TrimEnd(' ', ',');
        }
        var to = text.IndexOf(" to ", StringComparison.OrdinalIgnoreCase);
        if (to > 0)
        {
            return new(text[..to].Trim(), text[(to + 4)..].Trim(), likely);
        }
        var dash = Dash(text);
        return dash > 0 ? new(text[..dash].TrimEnd(), text[(dash + 1)..].TrimStart(), likely) : new(text, null, likely);
    }

    // A dash parts two ends when a number follows it and it does not begin the text; "1-1/2 in" is one number.
    private static int Dash(string text)
    {
        var i = text.Length > 0 && text[0] is '-' or '−' or '+' ? 1 : 0;
        while (i < text.Length && text[i] == ' ')
        {
            i++;
        }
        i += NumberText.Length(text.AsSpan(Math.Min(i, text.Length)));
        for (; i < text.Length - 1; i++)
        {
            if (text[i] is '-' or '–' or '—' && i > 0)
            {
                var rest = text.AsSpan(i + 1).TrimStart();
                if (rest.Length > 0 && (char.IsAsciiDigit(rest[0]) || rest[0] is '-' or '−' || NumberText.Length(rest) > 0))
                {
                    return i;
                }
            }
        }
        return -1;
    }
}
