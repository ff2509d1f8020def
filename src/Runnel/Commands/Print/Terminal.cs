using System.Text;

namespace Runnel.Host.Commands.Print;

/// <summary>Where a command writes: the answer to one stream, errors to another.</summary>
/// <param name="Out">The answer, and nothing else.</param>
/// <param name="Error">Errors.</param>
/// <param name="Width">Columns of a line.</param>
/// <param name="Colour">True if colours may be used.</param>
public sealed record Terminal(TextWriter Out, TextWriter Error, int Width = Terminal.UsualWidth, bool Colour = false)
{
    /// <summary>Width when the output goes to a file or another program.</summary>
    public const int UsualWidth = 80;

    private const int Narrowest = 60;
    private const int Widest = 110;

    /// <summary>The console: as wide as it is, in colour only where a person looks at it and NO_COLOR is not set.</summary>
    public static Terminal Console()
    {
        var file = System.Console.IsOutputRedirected;
        var plain = Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 } || Environment.GetEnvironmentVariable("TERM") is "dumb";
        return new(
            Writer(System.Console.OpenStandardOutput()), Writer(System.Console.OpenStandardError()),
            file ? UsualWidth : Math.Clamp(WindowWidth(), Narrowest, Widest), !file && !plain);
    }

    private static int WindowWidth()
    {
        try
        {
            return System.Console.WindowWidth is > 0 and var width ? width : UsualWidth;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException)
        {
            return UsualWidth;
        }
    }

    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), bufferSize: 16384);
}
