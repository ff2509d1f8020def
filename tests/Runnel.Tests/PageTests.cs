using System.Text.RegularExpressions;

namespace Runnel.Host.Tests;

/// <summary>What is read in a terminal.</summary>
public sealed partial class PageTests
{
    private const string Laundry = "examples/laundry-room.yaml";
    private const string LeanTo = "examples/lean-to-greenhouse.yaml";

    public static TheoryData<string, string, string> Pages
    {
        get
        {
            var pages = new TheoryData<string, string, string>();
            foreach (var plan in new[] { Laundry, LeanTo })
            {
                foreach (var units in new[] { "metric", "us" })
                {
                    foreach (var command in new[]
                        { "check", "cost", "balance", "balance --from beds", "balance --from fish", "balance --from feed", "balance --from tank", "cost --working list", "cost --working run.year.total" })
                    {
                        pages.Add(plan, units, command);
                    }
                }
            }
            return pages;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_line_is_longer_than_80(string plan, string units, string command)
    {
        var words = command.Split(' ');
        var ran = await Ran.Here([words[0], plan, .. words[1..], "--units", units]);

        Assert.Equal(0, ran.Code);
        Assert.All(ran.Lines, l => Assert.True(l.Length <= 80, l));
        // Every page holds more than a title, and no table is cut down to single letters.
        Assert.True(ran.Lines.Length > 10);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(72)]
    [InlineData(110)]
    public async Task A_narrow_or_wide_terminal_is_respected(int width)
    {
        foreach (var command in new[] { "check", "cost", "balance" })
        {
            var ran = await Ran.Here(null, [command, LeanTo], width);
            Assert.All(ran.Lines, l => Assert.True(l.Length <= width, l));
        }
    }

    [Fact]
    public async Task Every_number_opens()
    {
        var document = (await Ran.Here("cost", Laundry, "--draws", "0", "--json")).Json;
        var ids = document.GetProperty("figures").EnumerateArray().Select(f => f.GetProperty("id").GetString()!).ToList();

        Assert.True(ids.Count > 100);
        foreach (var id in ids)
        {
            var ran = await Ran.Here("cost", Laundry, "--draws", "0", "--working", id);
            Assert.Equal(0, ran.Code);
            Assert.All(ran.Lines, l => Assert.True(l.Length <= 80, l));
        }
    }

    [Fact]
    public async Task Colour_only_where_it_may_be()
    {
        var coloured = await Ran.Here(null, ["check", Laundry], colour: true);
        var plain = await Ran.Here("check", Laundry);

        Assert.Contains('\u001b', coloured.Out);
        Assert.DoesNotContain('\u001b', plain.Out);
        // Colour adds nothing to what is said.
        Assert.Equal(plain.Out, Escapes().Replace(coloured.Out, ""));
    }

    [Fact]
    public async Task A_name_in_a_plan_cannot_steer_the_terminal()
    {
        using var plan = PlanOnDisk.Example("laundry-room", ("name: Laundry-room loop", "name: \"Loop \\e[31mred\\a\""));
        var ran = await Ran.Here("cost", plan.Path);

        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain('\u001b', ran.Out);
        Assert.DoesNotContain('\a', ran.Out);
    }

    [Fact]
    public async Task Gravity_is_said_in_words_and_signs()
    {
        using var plan = PlanOnDisk.Example("laundry-room", ("{watts: 200 W, keep: 20 °C}", "{watts: 20 W, keep: 20 °C}"));
        var ran = await Ran.Here("check", plan.Path);

        Assert.Contains(ran.Lines, l => l.StartsWith("!! Grave (1)", StringComparison.Ordinal));
        Assert.Contains(ran.Lines, l => l.StartsWith("1 grave finding: do not build it like this.", StringComparison.Ordinal));
        Assert.True(ran.Out.IndexOf("!! Grave", StringComparison.Ordinal) < ran.Out.IndexOf("! Warnings", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_cost_names_what_has_no_price()
    {
        var ran = await Ran.Here("cost", LeanTo);

        Assert.Contains("Total, incomplete", ran.Out, StringComparison.Ordinal);
        Assert.Matches(@"box 16 ft x 4 ft x 14 in +1 +no price", ran.Out);
    }

    [Theory]
    [InlineData]
    [InlineData("check")]
    [InlineData("cost")]
    [InlineData("balance")]
    [InlineData("sum")]
    [InlineData("open")]
    public async Task Help_teaches_with_an_example(params string[] command)
    {
        var ran = await Ran.Here([.. command, "--help"]);

        Assert.Equal(0, ran.Code);
        Assert.Contains(command.Length == 0 ? "runnel cost examples/laundry-room.yaml" : $"    runnel {command[0]} ", ran.Out, StringComparison.Ordinal);
        Assert.Contains(command.Length == 0 ? "START WITH:" : "EXAMPLES:", ran.Out, StringComparison.Ordinal);
        Assert.True(command.Length == 0 || ran.Out.Contains("NEXT:", StringComparison.Ordinal));
        Assert.All(ran.Lines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public async Task Nothing_typed_is_answered_with_help() => Assert.Contains("START WITH:", (await Ran.Here()).Out, StringComparison.Ordinal);

    /// <summary>Derived: what follows from an end leads back to it.</summary>
    [Fact]
    public async Task A_balance_leads_back_to_where_it_began()
    {
        var feed = Value(await Ran.Here("balance", "--beds", "4m2", "--json"), "balance.feed");
        var area = Value(await Ran.Here("balance", "--feed", $"{feed:R} g", "--json"), "balance.area");
        var fish = Value(await Ran.Here("balance", "--beds", "43.0556 sq ft", "--json"), "balance.fish");
        var again = Value(await Ran.Here("balance", "--fish", $"{fish:R}kg", "--json"), "balance.feed");

        Assert.Equal(4, area, 1e-9);
        Assert.Equal(feed, again, 1e-4 * feed);

        static double Value(Ran ran, string id) =>
            ran.Json.GetProperty("figures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == id).GetProperty("value").GetDouble();
    }

    [GeneratedRegex("\u001b\\[[0-9;]*m")]
    private static partial Regex Escapes();
}
