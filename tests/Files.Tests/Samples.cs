namespace Runnel.Files.Tests;

/// <summary>The plans that the tests read, and where the repository is.</summary>
internal static class Samples
{
    public static string Root { get; } = Repository.Root;

    public static string Cellar { get; } = File.ReadAllText(Path.Combine(Root, "tests/Files.Tests/plans/cellar.yaml"));

    /// <summary>Every plan in the repository: those of the tests and the examples, when there are any.</summary>
    public static IReadOnlyList<string> Plans { get; } =
        [.. new[] { "tests/Files.Tests/plans", "examples" }.Select(d => Path.Combine(Root, d)).Where(Directory.Exists)
            .SelectMany(d => Directory.EnumerateFiles(d, "*.yaml")).Order(StringComparer.Ordinal)];
}
