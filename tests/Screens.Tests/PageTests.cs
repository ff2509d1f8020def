using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using Runnel.Screens.State;

namespace Runnel.Screens.Tests;

public sealed class PageTests : BunitContext
{
    private OpenPlan _plan = null!;

    [Fact]
    public void A_full_plan_shows_its_name_totals_and_every_section()
    {
        var page = Show(Plans.Example("laundry-room.yaml"));

        Assert.Equal("Laundry-room loop", page.Find("h1").TextContent);
        Assert.Equal(["At a glance", "Build", "Run", "Balance", "Findings", "Change"], page.FindAll("h2").Select(h => h.TextContent));
        var cards = page.FindAll(".card .big").Select(c => c.TextContent).ToList();
        Assert.All(["build.total", "run.month.total", "run.year.total"], id =>
            Assert.Contains(cards, c => c.Contains(_plan.Style.Value(_plan.Assessment!.Figures[id]), StringComparison.Ordinal)));
        Assert.Equal(12, page.FindAll(".fig.month").Count);
        Assert.NotEmpty(page.FindAll(".limits li"));
    }

    [Fact]
    public void The_sum_under_the_lamps_reads_as_one_would_write_it()
    {
        // Derived by hand: 2 × 50 W × 10 h = 1 kWh a day; × 365/12 days × 0.30 EUR = 9.125 EUR a month.
        var page = Show();

        Press(page, "Lamps in a mean month");

        Assert.Equal("Lamps in a mean month", page.Find("#panel-title").TextContent);
        Assert.Contains("2 lamps × 50 W = 100 W; × 10 h/d = 1 kWh/d", page.Find(".sentence").TextContent, StringComparison.Ordinal);
        Assert.Matches(@"^9\.1[23]$", page.Find(".panel-value .num").TextContent);
    }

    [Fact]
    public void One_can_go_down_to_an_input_and_back_along_the_way()
    {
        var page = Show();
        Press(page, "Lamps in a mean month");

        page.FindAll(".step").First(s => s.TextContent.Contains("electricity in a mean month", StringComparison.Ordinal)).Click();
        Assert.Contains("electricity in a mean month", page.Find("#panel-title").TextContent, StringComparison.Ordinal);
        Assert.Equal("Lamps in a mean month", page.Find(".way button").TextContent);

        page.Find(".way button").Click();
        Assert.Equal("Lamps in a mean month", page.Find("#panel-title").TextContent);

        page.Find(".panel").KeyDown(new KeyboardEventArgs { Key = "Escape" });
        Assert.Empty(page.FindAll(".panel"));
    }

    [Fact]
    public void Every_number_in_a_table_is_a_button_that_opens()
    {
        var page = Show(Plans.Example("laundry-room.yaml"));

        var bare = page.FindAll("table.list tbody td.n").Where(td => td.TextContent.Any(char.IsDigit) && td.QuerySelector("button.fig") is null);

        // A price that is owned or unused carries words only.
        Assert.DoesNotContain(bare, td => !td.TextContent.Contains("owned", StringComparison.Ordinal));
        Assert.True(page.FindAll("button.fig").Count > 100);
    }

    [Fact]
    public void Figures_follow_a_change_typed_into_the_open_panel()
    {
        var page = Show();
        Press(page, "Lamps in a mean month");

        Box(page, ".panel", "lamps/strip/hours").Input("5 h");

        // Half the hours, half the money: 4.5625 EUR.
        Assert.Matches(@"^4\.5[67]$", page.Find(".panel-value .num").TextContent);
        Assert.Matches(@"was 9\.1[23] EUR", page.Find(".was").TextContent);
        Assert.Equal("1 change not saved", page.Find(".state").TextContent);
        Assert.Contains("hours: 5 h}   # over the bed", _plan.File.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_cannot_be_read_is_refused_beside_its_box_and_nothing_changes()
    {
        var page = Show();
        var before = _plan.File.Text;

        Box(page, "#change", "lamps/strip/hours").Input("ten potatoes");

        var box = Box(page, "#change", "lamps/strip/hours");
        Assert.Equal("true", box.GetAttribute("aria-invalid"));
        var why = page.Find($"#{box.GetAttribute("aria-describedby")}");
        Assert.Equal("alert", why.GetAttribute("role"));
        Assert.Contains("still use “10 h”", why.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, _plan.File.Text);
        Assert.False(_plan.Changed);
    }

    [Fact]
    public void Undo_puts_text_and_figures_back()
    {
        var page = Show();
        Box(page, "#change", "lamps/strip/hours").Input("5 h");

        page.FindAll("button").Single(b => b.TextContent.Trim() == "Undo").Click();

        Assert.Equal("10 h", Box(page, "#change", "lamps/strip/hours").GetAttribute("value"));
        Assert.Equal("As in window.yaml", page.Find(".state").TextContent);
        Assert.True(page.FindAll("button").Single(b => b.TextContent.Trim() == "Undo").HasAttribute("disabled"));
    }

    [Fact]
    public void Unpriced_parts_are_named_and_the_total_is_called_incomplete()
    {
        var page = Show();

        Assert.Contains(page.FindAll(".incomplete"), i => i.TextContent.Contains("box 100 cm x 50 cm x 50 cm", StringComparison.Ordinal));
        Assert.Contains("The total is incomplete", page.Find("#build .notice").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("#build tr.unpriced .no-price"));
    }

    [Fact]
    public void A_missing_price_is_written_where_it_is_missed()
    {
        var page = Show();

        // A keystroke at a time, as a hand does it: what is not yet a price is refused, and the box keeps it.
        foreach (var text in new[] { "1", "12", "12 E", "12 EUR", "12 EUR e", "12 EUR each" })
        {
            Box(page, "#build", "prices/box 100 cm x 50 cm x 50 cm").Input(text);
        }

        Assert.Equal(12, _plan.Assessment!.Figures["part.box-100-cm-x-50-cm-x-50-cm.cost"].Value, 1e-9);
        Assert.DoesNotContain(page.FindAll(".incomplete"), i => i.TextContent.Contains("box 100 cm x 50 cm x 50 cm", StringComparison.Ordinal));
        Assert.Contains("box 100 cm x 50 cm x 50 cm: 12 EUR each", _plan.File.Text, StringComparison.Ordinal);
        Assert.Contains("strip: 20 to 40 EUR each, likely 30", _plan.File.Text, StringComparison.Ordinal);
        Assert.Single(_plan.Edits);
    }

    [Fact]
    public void Us_units_are_shown_without_touching_the_plan()
    {
        var page = Show();
        var before = _plan.File.Text;

        page.FindAll(".switch button").Single(b => b.TextContent == "US").Click();

        // 100 cm × 50 cm × 40 cm and 15 cm: 200 L + 75 L = 275 L = 72.65 US gallons.
        Assert.Contains("72.65", page.Find("#balance .facts").TextContent, StringComparison.Ordinal);
        Assert.Equal(before, _plan.File.Text);
        Assert.Equal("true", page.FindAll(".switch button").Single(b => b.TextContent == "US").GetAttribute("aria-pressed"));
    }

    [Fact]
    public void Findings_carry_word_and_icon_and_cautions_stand_where_one_acts()
    {
        var page = Show(Plans.Example("laundry-room.yaml"));

        Assert.All(page.FindAll(".mark"), m =>
        {
            Assert.NotNull(m.QuerySelector("svg"));
            Assert.NotEmpty(m.TextContent.Trim());
        });
        Assert.Contains("residual-current", page.Find("#run .cautions").TextContent, StringComparison.Ordinal);
        Assert.Contains("structural engineer", page.Find("#build .cautions").TextContent, StringComparison.Ordinal);
        Assert.Contains("permit", page.Find("#balance .cautions").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_with_errors_lists_them_with_place_reading_and_mend()
    {
        var page = Show(Plans.Wrong);

        var errors = page.FindAll(".errors li");
        Assert.Equal(_plan.File.Errors.Count, errors.Count);
        Assert.Contains(errors, e => e.TextContent.Contains("window.yaml:6:", StringComparison.Ordinal) && e.TextContent.Contains("deep", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.TextContent.Contains("window.yaml:8:", StringComparison.Ordinal) && e.QuerySelector(".mend") is not null);
        Assert.Empty(page.FindAll(".bar"));
    }

    [Fact]
    public void A_file_that_is_not_there_says_so()
    {
        _plan = new OpenPlan(() => App.Workbench.Open(Path.Combine(Path.GetTempPath(), $"none-{Guid.NewGuid():N}.yaml")), draws: 0);
        var page = Show(_plan);

        Assert.Contains("no such file", page.Find(".errors").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_with_nothing_to_price_or_balance_still_has_a_look()
    {
        var page = Show("""
            runnel: 1
            name: Bare tank
            currency: EUR
            place: {setting: indoors}
            vessels:
              tank: {role: fish tank, shape: tote 600 L}
            """);

        Assert.Equal("Bare tank", page.Find("h1").TextContent);
        Assert.Contains("Nothing to balance yet", page.Find("#balance").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_go_down_one_step_at_a_time()
    {
        var page = Show(Plans.Example("lean-to-greenhouse.yaml"));

        var levels = page.FindAll("h1, h2, h3, h4, h5").Select(h => h.TagName[1] - '0').ToList();
        Assert.Equal(1, levels.Count(l => l == 1));
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.First} is followed by h{pair.Second}"));
    }

    private IRenderedComponent<PlanPage> Show(string text = Plans.Small) => Show(Plans.Open(text));

    private IRenderedComponent<PlanPage> Show(OpenPlan plan)
    {
        _plan = plan;
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddSingleton(plan);
        SetRendererInfo(new("Server", isInteractive: true));
        return Render<PlanPage>();
    }

    private static void Press(IRenderedComponent<PlanPage> page, string label) =>
        page.FindAll("button.fig").First(b => b.TextContent.EndsWith(label, StringComparison.Ordinal)).Click();

    private static IElement Box(IRenderedComponent<PlanPage> page, string within, string path) => page.Find($"{within} input[data-path='{path}']");
}
