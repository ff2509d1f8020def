using System.Text;

namespace Runnel.Files.Photometry;

/// <summary>A photometric file as laboratories give it out (ANSI/IES LM-63), with what was read from it.</summary>
/// <remarks>Source: LM-63-2002 in its public description; codes and older editions partly from memory. A file is a few kilobytes; what is
/// wrong with one is told all at once, up to <see cref="MostErrors"/>.</remarks>
public sealed class PhotometryFile
{
    /// <summary>How many errors are told at most; one more says that there are others.</summary>
    public const int MostErrors = 20;

    internal const int LongestText = 4_000_000;

    private PhotometryFile(string fileName, MeasuredLamp? lamp, IReadOnlyList<PlanError> errors, IReadOnlyList<PlanError> remarks) =>
        (FileName, Lamp, Errors, Remarks) = (fileName, lamp, errors, remarks);

    /// <summary>Name of the file, as errors give it.</summary>
    public string FileName { get; }

    /// <summary>The lamp, or null if there is any error.</summary>
    public MeasuredLamp? Lamp { get; }

    /// <summary>All errors, in the order of the file.</summary>
    public IReadOnlyList<PlanError> Errors { get; }

    /// <summary>What departs from the standard and does no harm.</summary>
    public IReadOnlyList<PlanError> Remarks { get; }

    /// <summary>Reads a file from disk. One that cannot be read is an error in <see cref="Errors"/>, not an exception.</summary>
    public static PhotometryFile Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var name = Path.GetFileName(path);
        return TextOf(path, out var problem) is { } text
            ? Parse(text, name, beside => TextOf(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".", beside), out _))
            : new(name, null, [new(name, 1, 1, "", "", problem, "check its name and folder")], []);
    }

    /// <summary>Reads a file from text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Its name, for errors.</param>
    /// <param name="readBeside">Gives the text of a file beside it by its name (for TILT=name), or null if there is none.</param>
    public static PhotometryFile Parse(string text, string fileName, Func<string, string?>? readBeside = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var faults = new Faults(fileName);
        var lamp = Lm63Reader.Read(text, faults, readBeside ?? (_ => null));
        return new(fileName, faults.Errors.Count == 0 ? lamp : null, faults.Errors, faults.Remarks);
    }

    // The standard asks for ASCII; letters beyond it stand in names only, so a wrong guess of their encoding does no harm.
    private static string? TextOf(string path, out string problem)
    {
        problem = "there is no such file";
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                return null;
            }
            if (file.Length > LongestText)
            {
                problem = $"the file has {file.Length:N0} bytes, more than a photometric file may have";
                return null;
            }
            return Encoding.Latin1.GetString(File.ReadAllBytes(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            problem = $"the file cannot be read: {e.Message}";
            return null;
        }
    }
}
