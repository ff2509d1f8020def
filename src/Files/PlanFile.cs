using Runnel.Engine.Plan;
using Runnel.Files.Binding;
using Runnel.Files.Edit;

namespace Runnel.Files;

/// <summary>A plan's text with what was read from it. Never changes: a change gives another.</summary>
public sealed class PlanFile
{
    private readonly ReadPlan read;
    private readonly Func<string, string?>? readBeside;
    private readonly DiskCopy? disk;

    private PlanFile(string text, string fileName, Func<string, string?>? readBeside, DiskCopy? disk, ReadPlan read)
    {
        (Text, FileName, this.readBeside, this.disk, this.read) = (text, fileName, readBeside, disk, read);
    }

    /// <summary>Name of the file, as errors give it.</summary>
    public string FileName { get; }

    /// <summary>The whole text, a byte order mark included.</summary>
    public string Text { get; }

    /// <summary>The plan, or null if there is any error.</summary>
    public LoopPlan? Plan => read.Plan;

    /// <summary>All errors, in the order of the file.</summary>
    public IReadOnlyList<PlanError> Errors => read.Errors;

    /// <summary>Reads a plan from disk. A file that cannot be read is an error in <see cref="Errors"/>, not an exception.</summary>
    public static PlanFile Read(string path)
    {
        var name = Path.GetFileName(path);
        var copy = DiskCopy.Read(path, out var text, out var error);
        if (error is not null)
        {
            return new("", name, null, null, new(null, [error], null, new Dictionary<Yaml.MapNode, PartInfo>()));
        }
        string? Beside(string other) => DiskCopy.ReadBeside(path, other);
        return new(text, name, Beside, copy, PlanReader.Read(text, name, Beside));
    }

    /// <summary>Reads a plan from text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Its name, for errors.</param>
    /// <param name="readBeside">Gives the text of a file beside the plan by its name, or null if there is none.</param>
    public static PlanFile Parse(string text, string fileName, Func<string, string?>? readBeside = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        return new(text, fileName, readBeside, null, PlanReader.Read(text, fileName, readBeside));
    }

    /// <summary>True if the value at a path can be replaced, or written where its default stands now.</summary>
    public bool CanChange(string path) => PlanEdit.Find(read, path) is not null;

    /// <summary>What is written at a path, without quotation marks; null if nothing is, or a list or mapping.</summary>
    public string? TextAt(string path) => PlanEdit.TextAt(read, path);

    /// <summary>The same file with one value replaced, or added where its default stood; every other character stays.</summary>
    /// <exception cref="ArgumentException">The path leads to no single value; ask <see cref="CanChange"/>.</exception>
    public PlanFile With(string path, string newValue)
    {
        ArgumentNullException.ThrowIfNull(newValue);
        var text = PlanEdit.Change(Text, read, path, newValue);
        return new(text, FileName, readBeside, disk, PlanReader.Read(text, FileName, readBeside));
    }

    /// <summary>Writes the text in place of the file it was read from: a new file beside it, flushed, then renamed over it.</summary>
    /// <exception cref="PlanSaveException">The file was changed meanwhile, or cannot be written; it is left as it is.</exception>
    public void Save()
    {
        if (disk is null)
        {
            throw new PlanSaveException($"{FileName} was not read from a file on disk, so it cannot be saved in its place");
        }
        disk.Write(Text);
    }
}
