using System.Text;

namespace Runnel.Files.Weather;

/// <summary>Reads weather files from disk.</summary>
public static class WeatherReader
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads the weather file that a plan names.</summary>
    /// <param name="planPath">The plan's file.</param>
    /// <param name="name">What stands in the plan at <c>place/weather</c>: a file in the plan's folder or below it.</param>
    public static EpwReading Beside(string planPath, string name)
    {
        ArgumentNullException.ThrowIfNull(planPath);
        ArgumentNullException.ThrowIfNull(name);
        if (name.AsSpan().IsWhiteSpace() || name.Contains('\0', StringComparison.Ordinal))
        {
            return Fail(name, "this is not the name of a file", "the name of an EPW file beside the plan");
        }
        // A plan may come from somebody else: it does not get to read all over the disk.
        if (Path.IsPathRooted(name) || name.Contains(':', StringComparison.Ordinal) || name.Split('/', '\\').Contains(".."))
        {
            return Fail(name, "a weather file stands beside its plan", "copy it into the plan's folder and give its name alone");
        }
        return Read(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(planPath)) ?? ".", name));
    }

    /// <summary>Reads a weather file. What is wrong with it is in the result, never an exception.</summary>
    public static EpwReading Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var name = Path.GetFileName(path);
        try
        {
            if (Directory.Exists(path))
            {
                return Fail(name, "this is a folder", "the name of an EPW file");
            }
            var length = new FileInfo(path).Length;
            // Pipes and devices say 0 and are never opened: opening one could wait forever.
            if (length == 0)
            {
                return Fail(name, "the file is empty", "an EPW file has eight header lines and 8760 rows");
            }
            if (length > EpwFile.LargestBytes)
            {
                return Fail(name, $"the file has {length:N0} bytes, more than a weather file may have", $"{EpwFile.LargestBytes:N0} are read at most");
            }
            return EpwFile.Parse(Text(File.ReadAllBytes(path)), name);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Fail(name, "there is no such file", "check its name and folder");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return Fail(name, "the file cannot be read", e.Message);
        }
    }

    // Old files write names of towns in Latin 1, which every byte is a character of.
    private static string Text(byte[] bytes)
    {
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }

    private static EpwReading Fail(string name, string problem, string mend) => new(null, [new(name, 1, 1, "", "", problem, mend)]);
}
