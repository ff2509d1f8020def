namespace Runnel.Host.Tests;

/// <summary>A plan in a folder of its own, gone after the test.</summary>
internal sealed class PlanOnDisk : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("runnel");

    public PlanOnDisk(string text, string name = "plan.yaml")
    {
        Path = System.IO.Path.Combine(_folder.FullName, name);
        File.WriteAllText(Path, text);
    }

    public string Path { get; }

    /// <summary>An example with some text replaced; the text must be there.</summary>
    public static PlanOnDisk Example(string name, params (string Old, string New)[] changes)
    {
        var text = File.ReadAllText(System.IO.Path.Combine(Ran.Root, "examples", name + ".yaml"));
        foreach (var (old, @new) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, @new, StringComparison.Ordinal);
        }
        return new(text);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
