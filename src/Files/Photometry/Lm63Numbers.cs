using System.Globalization;

namespace Runnel.Files.Photometry;

/// <summary>The numbers of a file one after the other, over all its lines: commas, spaces and line ends part them alike.</summary>
internal sealed class Lm63Numbers(IReadOnlyList<string> lines, int firstLine, Faults faults, string? file = null)
{
    private int line = firstLine;
    private int at;
    private bool missed;

    /// <summary>No more than so many numbers can follow.</summary>
    public long MostLeft => lines.Skip(line).Sum(l => (long)l.Length / 2 + 1);

    /// <summary>The next number; one that is none is an error and comes as not-a-number, so that reading goes on.</summary>
    /// <param name="where">What it should be.</param>
    /// <returns>The number, or null at the end of the file, which is told once.</returns>
    public Token? Next(string where)
    {
        if (Peek() is not { } token)
        {
            if (!missed)
            {
                missed = true;
                faults.Error(Math.Max(1, lines.Count), 1, where, "", "the file ends before this number", "check the counts on the line of ten numbers, and that the file is whole", file);
            }
            return null;
        }
        at += token.Text.Length;
        if (double.IsNaN(token.Value))
        {
            faults.Error(token, where, "this is no number", "write a number with a decimal point, such as 12.5");
        }
        return token;
    }

    /// <summary>As many numbers as were announced; fewer if the file ends or the errors are enough.</summary>
    public List<Token> Next(int count, Func<int, string> where)
    {
        var found = new List<Token>();
        while (found.Count < count && !faults.Full && Next(where(found.Count)) is { } token)
        {
            found.Add(token);
        }
        return found;
    }

    /// <summary>What comes next, without taking it; null at the end.</summary>
    public Token? Peek()
    {
        while (line < lines.Count)
        {
            var text = lines[line];
            while (at < text.Length && Parts(text[at]))
            {
                at++;
            }
            if (at < text.Length)
            {
                var end = at;
                while (end < text.Length && !Parts(text[end]))
                {
                    end++;
                }
                var word = text[at..end];
                var value = double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
                    ? number
                    : double.NaN;
                return new(file, line + 1, at + 1, word, value);
            }
            (line, at) = (line + 1, 0);
        }
        return null;
    }

    private static bool Parts(char c) => c <= ' ' || c == ',';
}
