using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Runnel.Browser.Tests;

/// <summary>Rules of WCAG 2.2 A and AA and good practice, as far as a program can check them.</summary>
public sealed class AccessTests(Site site)
{
    [Theory]
    [InlineData("laundry-room.yaml", 1280, 900)]
    [InlineData("laundry-room.yaml", 390, 844)]
    [InlineData("lean-to-greenhouse.yaml", 1280, 900)]
    [InlineData("lean-to-greenhouse.yaml", 390, 844)]
    public async Task The_plan_has_no_violations(string example, int width, int height)
    {
        await using var visit = await site.Visit(example, width, height);
        await visit.Plan.Ready();
        await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");

        await Clean(visit);
    }

    [Theory]
    [InlineData(1280, 900)]
    [InlineData(390, 844)]
    public async Task An_open_working_with_a_refused_change_has_no_violations(int width, int height)
    {
        await using var visit = await site.Visit("laundry-room.yaml", width, height);
        await visit.Plan.Ready();
        await visit.Plan.Lever("lamps/bed lamps/hours").FillAsync("15 h");
        await visit.Plan.RunPart("Lamps").ClickAsync();
        await visit.Plan.PanelBox("lamps/bed lamps/hours").FillAsync("fifteen");
        await Expect(visit.Plan.PanelBox("lamps/bed lamps/hours")).ToHaveAttributeAsync("aria-invalid", "true");

        await Clean(visit);
    }

    [Theory]
    [InlineData(1280, 900)]
    [InlineData(390, 844)]
    public async Task A_list_of_errors_has_no_violations(int width, int height)
    {
        await using var visit = await site.Visit("laundry-room.yaml", width, height, t => t.Replace("watts: 48 W", "watts: bright", StringComparison.Ordinal));
        await visit.Page.Locator(".page[data-live='true']").WaitForAsync();

        await Clean(visit);
    }

    private static async Task Clean(Visit visit)
    {
        AxeResult result = await visit.Page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.True(result.Violations.Length == 0, string.Join('\n', result.Violations.Select(v =>
            $"{v.Id}: {v.Help} ({v.Nodes.Length}×): {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
