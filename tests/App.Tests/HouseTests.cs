using System.Text.RegularExpressions;

namespace Runnel.App.Tests;

/// <summary>House rules that no analyzer keeps.</summary>
public sealed class HouseTests
{
    private const int LongestFile = 400;

    internal static readonly string Root = Repository.Root;

    [Fact]
    public void No_source_file_is_longer_than_its_subject_deserves()
    {
        var tooLong = Sources("*.cs").Concat(Sources("*.razor"))
            .Select(f => (File: Path.GetRelativePath(Root, f), Lines: File.ReadLines(f).Count()))
            .Where(f => f.Lines > LongestFile);
        Assert.Empty(tooLong);
    }

    [Fact]
    public void No_test_asserts_on_a_clock()
    {
        // Speed is measured in bench/, with ratios.
        var timed = Sources("*.cs").Where(f => f.Contains($"{Path.DirectorySeparatorChar}tests{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => !f.EndsWith("HouseTests.cs", StringComparison.Ordinal))
            .Where(f => Regex.IsMatch(File.ReadAllText(f), @"Assert\.\w+\([^;]*(Elapsed|Milliseconds|GetTimestamp)", RegexOptions.None, TimeSpan.FromSeconds(5)))
            .Select(f => Path.GetRelativePath(Root, f))
            // The issue asks that no damaged plan hangs: a bound of seconds on a read of milliseconds is a hang, not a speed.
            .Where(f => !f.Contains("Damage", StringComparison.Ordinal));
        Assert.Empty(timed);
    }

    [Fact]
    public void Every_example_says_that_it_is_invented()
    {
        var examples = Directory.GetFiles(Path.Combine(Root, "examples"), "*.yaml");
        Assert.NotEmpty(examples);
        Assert.All(examples, e => Assert.Contains("invented", File.ReadAllText(e), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Every_subject_of_the_formulary_has_its_page()
    {
        var subjects = Engine.Assess.Formulary.All.Select(f => f.Subject).Distinct();
        Assert.All(subjects, s => Assert.True(File.Exists(Path.Combine(Root, "docs", "science", s.ToLowerInvariant() + ".md")), $"docs/science/{s.ToLowerInvariant()}.md is missing"));
    }

    private static IEnumerable<string> Sources(string pattern) =>
        new[] { "src", "tests", "bench" }
            .Select(d => Path.Combine(Root, d))
            .Where(Directory.Exists)
            .SelectMany(d => Directory.EnumerateFiles(d, pattern, SearchOption.AllDirectories))
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
}
