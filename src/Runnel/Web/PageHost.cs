using System.Net;
using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using MudBlazor.Services;
using Runnel.App;
using Runnel.Screens.State;

namespace Runnel.Host.Web;

/// <summary>Shows one plan as a page, to browsers on this machine only.</summary>
public static class PageHost
{
    /// <summary>Serves a plan until it is told to stop, and prints the address once it listens.</summary>
    /// <param name="planPath">The plan file. It may have errors: the page then lists them.</param>
    /// <param name="port">Port on 127.0.0.1; a free one when null.</param>
    /// <param name="cancel">Stops the host.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task RunAsync(string planPath, int? port = null, CancellationToken cancel = default)
    {
        await using var page = await StartAsync(planPath, port, cancel);
        Console.WriteLine(page.Address);
        await page.StoppedAsync(cancel);
        if (page.Plan.Changed)
        {
            Console.WriteLine($"Not saved in {page.Plan.File.FileName}:");
            foreach (var edit in page.Plan.Edits)
            {
                Console.WriteLine($"  {edit.Where}: {edit.Text}");
            }
        }
    }

    /// <summary>Starts serving a plan and returns once it listens.</summary>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<RunningPage> StartAsync(string planPath, int? port = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(planPath);
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            // Found by name and place, so that it does not matter who starts the host and from which folder.
            ApplicationName = typeof(PageHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
            Args = [],
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(k => k.Listen(IPAddress.Loopback, port ?? 0));
        builder.Logging.ClearProviders().AddConsole(c => c.LogToStandardErrorThreshold = LogLevel.Trace).SetMinimumLevel(LogLevel.Error)
            // A port that is taken is told by whoever called, in one line.
            .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        // A page of another site that has its name resolved to this machine is turned away.
        builder.Configuration["AllowedHosts"] = "127.0.0.1;localhost";
        builder.Services.AddHostFiltering(o => o.AllowedHosts = ["127.0.0.1", "localhost"]);
        // Keys die with the host: nothing is left in the home folder.
        builder.Services.AddDataProtection();
        builder.Services.Configure<KeyManagementOptions>(o => o.XmlRepository = new KeysInMemory());
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddMudServices();
        var path = Path.GetFullPath(planPath);
        builder.Services.AddSingleton(_ => new OpenPlan(() => Workbench.Open(path)));

        var app = builder.Build();
        app.UseHostFiltering();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapRazorComponents<Document>()
            .AddAdditionalAssemblies(typeof(Screens.Routes).Assembly)
            .AddInteractiveServerRenderMode();
        try
        {
            await app.StartAsync(cancel);
        }
        catch
        {
            await app.DisposeAsync();
            throw;
        }
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new(app, new Uri(address.EndsWith('/') ? address : address + "/"), app.Services.GetRequiredService<OpenPlan>());
    }
}

/// <summary>A plan that is being served.</summary>
public sealed class RunningPage : IAsyncDisposable
{
    private readonly WebApplication _app;

    internal RunningPage(WebApplication app, Uri address, OpenPlan plan) => (_app, Address, Plan) = (app, address, plan);

    /// <summary>Where the page is.</summary>
    public Uri Address { get; }

    /// <summary>What it shows.</summary>
    public OpenPlan Plan { get; }

    /// <summary>Waits until the host stops, by Ctrl+C or by the token.</summary>
    public Task StoppedAsync(CancellationToken cancel = default) => _app.WaitForShutdownAsync(cancel);

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(2));
        await _app.StopAsync(patience.Token);
        await _app.DisposeAsync();
    }
}

/// <summary>Keys of one run of the host.</summary>
internal sealed class KeysInMemory : IXmlRepository
{
    private readonly Lock _gate = new();
    private readonly List<XElement> _keys = [];

    public IReadOnlyCollection<XElement> GetAllElements()
    {
        lock (_gate)
        {
            return [.. _keys.Select(k => new XElement(k))];
        }
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        lock (_gate)
        {
            _keys.Add(new XElement(element));
        }
    }
}
