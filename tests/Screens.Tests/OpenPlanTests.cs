using Runnel.App;
using Runnel.Screens.Opened;
using Runnel.Screens.State;
using Runnel.Screens.Views;

namespace Runnel.Screens.Tests;

public sealed class OpenPlanTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("runnel").FullName;

    [Fact]
    public void Keys_typed_into_one_value_are_one_change_to_undo()
    {
        using var plan = Plans.Open();
        var before = plan.File.Text;

        Assert.Empty(plan.Type("lamps/strip/hours", "1"));
        Assert.Empty(plan.Type("lamps/strip/hours", "12"));
        Assert.Empty(plan.Type("lamps/strip/hours", "12 h"));
        Assert.Equal([new Edit("lamps/strip/hours", "12 h")], plan.Edits);

        plan.Undo();
        Assert.Equal(before, plan.File.Text);
        Assert.False(plan.CanUndo);
    }

    [Fact]
    public void What_is_typed_after_a_rest_is_another_change()
    {
        using var plan = Plans.Open();
        plan.Type("lamps/strip/hours", "12 h");
        plan.Rest();
        plan.Type("lamps/strip/hours", "14 h");

        plan.Undo();
        Assert.Equal("12 h", plan.File.TextAt("lamps/strip/hours"));
    }

    [Fact]
    public void A_refused_text_leaves_the_last_good_one()
    {
        using var plan = Plans.Open();
        plan.Type("lamps/strip/hours", "12 h");

        Assert.NotEmpty(plan.Type("lamps/strip/hours", "12 hens"));
        Assert.NotEmpty(plan.Type("no/such/path", "1"));

        Assert.Equal("12 h", plan.File.TextAt("lamps/strip/hours"));
        Assert.Single(plan.Edits);
    }

    [Fact]
    public async Task Likely_values_come_at_once_and_ranges_after_a_rest()
    {
        using var plan = Plans.Open(draws: 32, idle: TimeSpan.FromMilliseconds(20));
        var ready = new TaskCompletionSource();
        plan.Updated += (_, _) =>
        {
            if (!plan.RangesPending && plan.Assessment?.Draws > 0)
            {
                ready.TrySetResult();
            }
        };

        plan.Type("prices/strip", "10 to 50 EUR each");
        Assert.True(plan.RangesPending);
        // Two strips at 10 to 50 EUR, likely in the middle: 60 EUR.
        Assert.Equal(60, plan.Assessment!.Figures["part.strip.cost"].Value, 1e-9);

        await ready.Task.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
        var cost = plan.Assessment!.Figures["part.strip.cost"];
        Assert.True(cost.IsRange);
        Assert.InRange(cost.Low, 20, 60);
        Assert.InRange(cost.High, 60, 100);
    }

    [Fact]
    public void Saving_replaces_that_value_only()
    {
        var path = Write(Plans.Small);
        using var plan = new OpenPlan(() => Workbench.Open(path), draws: 0);
        plan.Type("lamps/strip/hours", "12 h");

        plan.Save();

        Assert.Null(plan.SaveTrouble);
        Assert.True(plan.JustSaved);
        Assert.Empty(plan.Edits);
        Assert.Equal(Plans.Small.Replace("hours: 10 h", "hours: 12 h", StringComparison.Ordinal), File.ReadAllText(path));
    }

    [Fact]
    public void A_file_changed_meanwhile_is_not_overwritten_and_no_change_is_lost()
    {
        var path = Write(Plans.Small);
        using var plan = new OpenPlan(() => Workbench.Open(path), draws: 0);
        plan.Type("lamps/strip/hours", "12 h");
        plan.Rest();
        plan.Type("lamps/strip/watts", "60 W");
        var theirs = Plans.Small.Replace("0.30 EUR", "0.40 EUR", StringComparison.Ordinal);
        File.WriteAllText(path, theirs);

        plan.Save();

        Assert.NotNull(plan.SaveTrouble);
        Assert.Equal(theirs, File.ReadAllText(path));
        Assert.Equal(2, plan.Edits.Count);

        plan.ReadAgain(keepChanges: true);
        Assert.Null(plan.SaveTrouble);
        Assert.Empty(plan.Lost);
        Assert.Equal(["12 h", "60 W", "0.40 EUR per kWh"],
            [plan.File.TextAt("lamps/strip/hours"), plan.File.TextAt("lamps/strip/watts"), plan.File.TextAt("tariff/energy/0/price")]);

        plan.Save();
        Assert.Null(plan.SaveTrouble);
        Assert.Contains("0.40 EUR", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Contains("hours: 12 h}   # over the bed", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_that_the_fresh_file_cannot_take_is_named()
    {
        var path = Write(Plans.Small);
        using var plan = new OpenPlan(() => Workbench.Open(path), draws: 0);
        plan.Type("lamps/strip/hours", "12 h");
        File.WriteAllText(path, string.Join('\n', Plans.Small.Split('\n').Where(l => !l.Contains("strip: {", StringComparison.Ordinal) && !l.StartsWith("lamps:", StringComparison.Ordinal))));

        plan.ReadAgain(keepChanges: true);

        Assert.Contains("12 h", Assert.Single(plan.Lost), StringComparison.Ordinal);
    }

    [Fact]
    public void The_way_to_a_figure_is_found_again_after_a_change()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));
        var trail = new Trail();
        trail.Open(plan.Assessment!.Figures["run.month.lamps"]);
        trail.Deeper(Working.Steps(trail.Current!)[0]);
        var name = trail.Current!.Label;
        var before = trail.Current.Si;

        plan.Type("lamps/bed lamps/hours", "8 h");
        trail.Follow(plan.Assessment);

        Assert.Equal(2, trail.Figures.Count);
        Assert.Equal(name, trail.Current!.Label);
        // Half the hours, half the energy.
        Assert.Equal(before / 2, trail.Current.Si, before * 1e-9);
    }

    [Fact]
    public void A_total_under_glass_leads_to_the_figure_of_the_other_plan()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));
        var trail = new Trail();
        trail.Open(plan.Assessment!.Figures["run.year.total.under-glass"]);
        trail.Deeper(Working.Steps(trail.Current!)[0]);

        plan.Type("spare money", "12 %");
        trail.Follow(plan.Assessment);

        Assert.Equal(2, trail.Figures.Count);
        Assert.Equal(trail.Figures[0].Si, trail.Current!.Si);
        Assert.NotEqual(plan.Assessment!.Figures["run.year.total"].Si, trail.Current.Si);
    }

    [Theory]
    [InlineData("laundry-room.yaml")]
    [InlineData("lean-to-greenhouse.yaml")]
    public void Every_lever_leads_to_a_value_that_can_be_changed_and_stands_once(string example)
    {
        using var plan = Plans.Open(Plans.Example(example));

        var levers = LeverGroup.Of(plan.File).SelectMany(g => g.Levers).ToList();

        Assert.True(levers.Count > 20);
        Assert.All(levers, l => Assert.True(plan.File.CanChange(l.Path), l.Path));
        Assert.Equal(levers.Count, levers.Select(l => l.Path).Distinct(StringComparer.Ordinal).Count());
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Write(string text)
    {
        var path = Path.Combine(_folder, "window.yaml");
        File.WriteAllText(path, text);
        return path;
    }
}
