using System.Text;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Tests;

/// <summary>Changes in place: one value changes, every other character stays.</summary>
public class EditTests
{
    private static PlanFile Cellar => PlanFile.Parse(Samples.Cellar, "cellar.yaml");

    [Theory]
    [InlineData("lamps/over the beds/hours", "hours: 14\n", "16 h", "hours: 16 h\n")]
    [InlineData("vessels/bed one/level", "level: 24 to 26 cm              # the siphon", "25 cm", "level: 25 cm              # the siphon")]
    [InlineData("fish/0/number", "number: 22 fish,", "30", "number: 30,")]
    [InlineData("prices/tote 600 L", "60 to 90 EUR, likely 70, used, seen 2026-10-02, at the yard", "80 EUR, used", "tote 600 L: 80 EUR, used\n")]
    [InlineData("prices/3/4 in hose", "4 USD per 10 ft, at the pipe shop", "5 USD per 10 ft", "3/4 in hose: 5 USD per 10 ft\n")]
    [InlineData("vessels/fish tank/shape#volume", "shape: tote 600 L", "tote 1000 L", "shape: tote 1000 L\n")]
    [InlineData("pumps/main pump/curve/1#head", "2.6 m at 0 L/h", "3 m at 0 L/h", "[0 m at 2400 L/h, 3 m at 0 L/h]")]
    [InlineData("note", "note: \"A test plan: invented from end to end.\"", "Say \"hello\"", "note: \"Say \\\"hello\\\"\"\n")]
    [InlineData("name", "name: Cellar loop", "a: b", "name: \"a: b\"\n")]
    [InlineData("tariff/energy/2/blocks/0/up to", "{up to: 200 kWh,", "250 kWh", "{up to: 250 kWh,")]
    [InlineData("place/room/height", "height: 2.1 m,", "2,2 m", "height: \"2,2 m\",")]
    public void Only_the_value_changes(string path, string before, string value, string after)
    {
        var file = Cellar;
        Assert.True(file.CanChange(path));
        var changed = file.With(path, value);
        Assert.Equal(value, changed.TextAt(path));
        Assert.Contains(after, changed.Text, StringComparison.Ordinal);
        // What is left when both values are cut out is the same text.
        var old = file.TextAt(path)!;
        Assert.Contains(before, file.Text, StringComparison.Ordinal);
        var (head, tail) = Common(file.Text, changed.Text);
        Assert.True(file.Text.Length - head - tail <= old.Length + 4, "more was cut out than the old value");
        Assert.True(changed.Text.Length - head - tail <= value.Length + 6, "more was put in than the new value");
        // Quotation marks that a value needed stay when it no longer needs them.
        if (path is not ("place/room/height" or "name"))
        {
            Assert.Equal(file.Text, changed.With(path, old).Text);
        }
    }

    [Fact]
    public void A_default_is_added_behind_a_list_in_brackets()
    {
        var file = PlanFile.Parse(Samples.Cellar, "cellar.yaml");
        var changed = file.With("pumps/main pump/life", "4 years").With("pumps/main pump/hours", "20 h");

        Assert.Empty(changed.Errors);
        Assert.Equal(20.0 / 24, changed.Plan!.Pumps["main pump"].Hours.Likely, 1e-12);
    }

    [Fact]
    public void Every_value_can_be_replaced_by_itself_without_a_trace()
    {
        var file = Cellar;
        foreach (var path in Estimates.Of(file.Plan!).Where(e => e.From.Kind == OriginKind.Plan).Select(e => e.From.Path).Distinct(StringComparer.Ordinal))
        {
            Assert.True(file.CanChange(path), path);
            Assert.Equal(file.Text, file.With(path, file.TextAt(path)!).Text);
        }
    }

    [Fact]
    public void Every_default_can_be_written_down()
    {
        var file = Cellar;
        var defaults = Estimates.Of(file.Plan!).Where(e => e.From.Kind == OriginKind.Default && !e.From.Path.Contains('#', StringComparison.Ordinal) &&
            !e.From.Path.EndsWith("/per", StringComparison.Ordinal)).DistinctBy(e => e.From.Path).ToList();
        Assert.True(defaults.Count > 20);
        foreach (var estimate in defaults)
        {
            var path = estimate.From.Path;
            Assert.True(file.CanChange(path), path);
            var changed = file.With(path, ValueText.Write(estimate));
            Assert.Empty(changed.Errors);
            var (head, tail) = Common(file.Text, changed.Text);
            Assert.Equal(file.Text.Length, head + tail);
            var now = Estimates.Of(changed.Plan!).First(e => e.From.Path == path);
            Assert.Equal(OriginKind.Plan, now.From.Kind);
            Assert.Equal(estimate.Likely, now.Likely, 1e-9 * Math.Abs(estimate.Likely));
        }
    }

    [Fact]
    public void A_default_goes_into_its_mapping_with_the_right_indentation()
    {
        var changed = PlanFile.Parse(Plans.With("fans:\n  f:\n    watts: 3 W   # small\n"), "plan.yaml").With("fans/f/hours", "6 h");
        Assert.EndsWith("    watts: 3 W   # small\n    hours: 6 h\n", changed.Text, StringComparison.Ordinal);
        Assert.Contains("pump: {watts: 8 W, hours: 6 h}\n", changed.With("pumps/pump/hours", "6 h").Text, StringComparison.Ordinal);
        Assert.Contains("\nwater: {use: 2 % a day}\n", changed.With("water/use", "2 % a day").Text, StringComparison.Ordinal);
        Assert.Contains("\nspare money: 15 %\n", changed.With("spare money", "15 %").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_endings_and_byte_order_mark_stay()
    {
        var text = "\uFEFF" + Plans.With("# end, no newline: ü\nfans:\n  f: {watts: 3 W}").Replace("\n", "\r\n", StringComparison.Ordinal);
        var file = PlanFile.Parse(text, "plan.yaml");
        Assert.Empty(file.Errors);
        Assert.Equal(text.Replace("watts: 3 W", "watts: 4 W", StringComparison.Ordinal), file.With("fans/f/watts", "4 W").Text);
        var added = file.With("spare money", "15 %").Text;
        Assert.Equal(text, added.Replace("spare money: 15 %\r\n", "", StringComparison.Ordinal));
        var nested = PlanFile.Parse(Plans.With("fans:\n  f:\n    watts: 3 W").Replace("\n", "\r\n", StringComparison.Ordinal), "plan.yaml").With("fans/f/hours", "6 h").Text;
        Assert.EndsWith("    watts: 3 W\r\n    hours: 6 h\r\n", nested, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', nested.Replace("\r\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void A_change_that_is_wrong_gives_errors_and_can_be_taken_back()
    {
        var wrong = Cellar.With("lamps/over the beds/hours", "25 h");
        Assert.Null(wrong.Plan);
        Assert.Equal("lamps / over the beds / hours", Assert.Single(wrong.Errors).Where);
        Assert.Equal(Samples.Cellar, wrong.With("lamps/over the beds/hours", "14").Text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("lamps")]
    [InlineData("lamps/no such lamp/hours")]
    [InlineData("lamps/over the beds/no such key")]
    [InlineData("fish/9/number")]
    [InlineData("fish/-1/number")]
    [InlineData("catalogue:species/Nile tilapia")]
    public void What_is_no_value_cannot_be_changed(string path)
    {
        Assert.False(Cellar.CanChange(path));
        Assert.Null(Cellar.TextAt(path));
        Assert.Throws<ArgumentException>(() => Cellar.With(path, "1"));
    }

    [Theory]
    [InlineData("1 W}\nname: stolen")]
    [InlineData("# gone")]
    [InlineData("- a")]
    [InlineData("[a, b]")]
    [InlineData("' \" \\ {")]
    [InlineData(" spaces ")]
    [InlineData("")]
    [InlineData("tab\there")]
    [InlineData("*alias")]
    [InlineData("ends with:")]
    public void Any_text_stays_one_value(string value)
    {
        foreach (var path in new[] { "name", "note", "lamps/over the beds/hours", "pumps/main pump/watts", "pumps/main pump/curve/0" })
        {
            var changed = Cellar.With(path, value);
            Assert.Equal(value, changed.TextAt(path));
            Assert.Equal("Cellar loop", path == "name" ? "Cellar loop" : changed.TextAt("name"));
        }
    }

    private static (int Head, int Tail) Common(string a, string b)
    {
        var head = 0;
        while (head < a.Length && head < b.Length && a[head] == b[head])
        {
            head++;
        }
        var tail = 0;
        while (tail < a.Length - head && tail < b.Length - head && a[^(tail + 1)] == b[^(tail + 1)])
        {
            tail++;
        }
        return (head, tail);
    }
}
