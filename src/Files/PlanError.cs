using System.Text;

namespace Runnel.Files;

/// <summary>Something in a plan file that cannot be taken as it stands.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, in UTF-16 characters.</param>
/// <param name="Where">Which input: "vessels / bed one / level"; empty for the file as a whole.</param>
/// <param name="Read">What stands there; empty when nothing does.</param>
/// <param name="Problem">What is wrong with it.</param>
/// <param name="Mend">What would be right; may be empty.</param>
public sealed record PlanError(string File, int Line, int Column, string Where, string Read, string Problem, string Mend)
{
    private const int LongestRead = 60;

    /// <inheritdoc />
    public override string ToString()
    {
        var text = new StringBuilder().Append(File).Append(':').Append(Line).Append(':').Append(Column).Append(": ");
        if (Where.Length > 0)
        {
            text.Append(Where).Append(": ");
        }
        if (Read.Length > 0)
        {
            text.Append("read \"").Append(Shorten(Read)).Append("\"; ");
        }
        text.Append(Problem);
        if (Mend.Length > 0)
        {
            text.Append("; ").Append(Mend);
        }
        return text.ToString();
    }

    private static string Shorten(string read)
    {
        var line = read.ReplaceLineEndings(" ");
        return line.Length <= LongestRead ? line : string.Concat(line.AsSpan(0, LongestRead), "…");
    }
}
