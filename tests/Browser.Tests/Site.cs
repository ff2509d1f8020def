using Microsoft.Playwright;
using Runnel.Host.Web;

[assembly: AssemblyFixture(typeof(Runnel.Browser.Tests.Site))]

namespace Runnel.Browser.Tests;

/// <summary>One browser for all journeys.</summary>
public sealed class Site : IAsyncLifetime
{
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            // The system's browser: nothing is downloaded for the tests.
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
    }

    /// <summary>Copies an example to a folder of its own, serves it and opens it.</summary>
    public async Task<Visit> Visit(string example, int width = 1280, int height = 900, Func<string, string>? edit = null)
    {
        var text = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "examples", example));
        var folder = Directory.CreateTempSubdirectory("runnel").FullName;
        var path = Path.Combine(folder, example);
        await File.WriteAllTextAsync(path, edit is null ? text : edit(text));
        var host = await PageHost.StartAsync(path);
        var context = await _browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ReducedMotion = ReducedMotion.Reduce });
        var page = await context.NewPageAsync();
        var visit = new Visit(host, context, page, folder, path);
        await page.GotoAsync(host.Address.ToString());
        return visit;
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}

/// <summary>One plan open in one browser window.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly RunningPage _host;
    private readonly IBrowserContext _context;
    private readonly string _folder;
    private readonly List<string> _complaints = [];

    internal Visit(RunningPage host, IBrowserContext context, IPage page, string folder, string path)
    {
        (_host, _context, Page, _folder, Path) = (host, context, page, folder, path);
        page.PageError += (_, error) => _complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                _complaints.Add(message.Text);
            }
        };
    }

    public IPage Page { get; }

    /// <summary>The plan's file.</summary>
    public string Path { get; }

    public Uri Address => _host.Address;

    /// <summary>How long the last change took inside the host, from its text to all likely values.</summary>
    public TimeSpan LastTook => _host.Plan.LastTook;

    /// <summary>What the browser's console complained of.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    public PlanPageModel Plan => new(Page);

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        await _host.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
