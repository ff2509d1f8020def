using Microsoft.Playwright;

namespace Runnel.Browser.Tests;

/// <summary>The page as a grower uses it: by what is written on it.</summary>
public sealed class PlanPageModel(IPage page)
{
    public ILocator State => page.Locator(".state");

    public ILocator Panel => page.GetByRole(AriaRole.Dialog);

    public ILocator PanelTitle => Panel.GetByRole(AriaRole.Heading, new() { Level = 2 });

    public ILocator PanelValue => Panel.Locator(".panel-value");

    public ILocator Sentence => Panel.Locator(".sentence");

    public ILocator MeanMonth => Card("A mean month");

    public ILocator Errors => page.Locator(".errors li");

    public ILocator Trouble => page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Not saved" });

    /// <summary>The number on one of the cards at the top.</summary>
    public ILocator Card(string title) => page.Locator(".card").Filter(new() { Has = page.GetByRole(AriaRole.Heading, new() { Name = title }) }).Locator(".big .num");

    /// <summary>A value in the list of levers.</summary>
    public ILocator Lever(string path) => page.Locator($"#change input[data-path='{path}']");

    public ILocator PanelBox(string path) => Panel.Locator($"input[data-path='{path}']");

    /// <summary>The cost of one part of the running bill in a mean month.</summary>
    public ILocator RunPart(string part) => page.Locator(".run-list tbody tr").Filter(new() { Has = page.GetByRole(AriaRole.Rowheader, new() { Name = part, Exact = true }) }).Locator("td.cost .fig");

    public ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>Waits until the page answers: before that a key would be typed into a picture of it.</summary>
    public async Task Ready()
    {
        await page.Locator(".page[data-live='true']").WaitForAsync();
        await Assertions.Expect(page.Locator(".glance .range").First).ToContainTextAsync("8 outcomes in 10", new() { Timeout = 20_000 });
    }

    /// <summary>True if the page must be scrolled sideways.</summary>
    public Task<bool> Overflows() => page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth");

    /// <summary>Names of what stands out to the right.</summary>
    public Task<string[]> Sticking() => page.EvaluateAsync<string[]>(
        "() => [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1 && !e.closest('.scroller') && !e.closest('.unseen')).slice(0, 5).map(e => e.tagName + '.' + e.className)");
}
