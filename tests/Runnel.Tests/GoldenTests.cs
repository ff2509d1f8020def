namespace Runnel.Host.Tests;

/// <summary>Pinned: our own reports of the examples, to notice a change. A change says in its commit why the new number is right.</summary>
public sealed class GoldenTests
{
    public static TheoryData<string, string> Reports
    {
        get
        {
            var reports = new TheoryData<string, string>();
            foreach (var plan in new[] { "floods-on-power-loss", "laundry-room", "lean-to-greenhouse" })
            {
                foreach (var command in new[] { "check", "cost", "balance" })
                {
                    reports.Add(plan, command);
                }
            }
            return reports;
        }
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public async Task The_report_is_as_it_was(string plan, string command)
    {
        var ran = await Ran.Here(command, $"examples/{plan}.yaml");
        Assert.Equal(0, ran.Code);
        var file = Path.Combine(Ran.Root, "tests/Runnel.Tests/golden", $"{plan}.{command}.txt");
        if (Environment.GetEnvironmentVariable("RUNNEL_GOLDEN") is "write")
        {
            await File.WriteAllTextAsync(file, ran.Out, TestContext.Current.CancellationToken);
            return;
        }
        var before = (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i < Math.Max(before.Length, ran.Lines.Length); i++)
        {
            var (was, @is) = (before.ElementAtOrDefault(i) ?? "(no line)", ran.Lines.ElementAtOrDefault(i) ?? "(no line)");
            Assert.True(was == @is, $"{file}:{i + 1}\n  was: {was}\n  is:  {@is}\nRUNNEL_GOLDEN=write ./test writes it anew; say in the commit why it is right.");
        }
    }
}
