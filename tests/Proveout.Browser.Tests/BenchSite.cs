using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Proveout.Web;
using Proveout.Web.Tests.InMemory;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>The bench on a free port of this computer, with one build started.</summary>
public sealed class BenchSite : IAsyncDisposable
{
    private readonly WebApplication _app;

    private BenchSite(WebApplication app, IBench bench, BuildSummary build) => (_app, Bench, Build) = (app, bench, build);

    public IBench Bench { get; }

    public BuildSummary Build { get; }

    public string Address => _app.Urls.First();

    public static async Task<BenchSite> StartAsync()
    {
        var bench = new InMemoryBench();
        var started = await bench.StartAsync(new StartBuild(bench.Machines()[0].Id, "oven-7", "Mara Lindt", ""), default);
        var app = BenchHost.Build(new BenchHostOptions(), bench);
        await app.StartAsync();
        return new BenchSite(app, bench, started.Value!);
    }

    public string Check(string checkId) => $"/builds/{Build.Id}/checks/{checkId}";

    public async Task<BenchState> StateAsync() => (await Bench.StateAsync(Build.Id, default))!;

    public async Task EnterAsync(string checkId, string text) =>
        await Bench.EnterReadingAsync(Build.Id, new ReadingRequest(checkId, text, "Mara Lindt", Guid.NewGuid()), default);

    /// <summary>One check passed, one failed.</summary>
    public async Task PrepareAsync()
    {
        await EnterAsync("line-to-relay", "0.3");
        await EnterAsync("line-to-neutral", "0.3");
    }

    /// <summary>A page in a browser of its own: no cookie is shared with another.</summary>
    public async Task<IPage> OpenAsync(
        BrowserFixture browser, string address, int width = 390, int height = 844, bool scripts = true, ColorScheme scheme = ColorScheme.Light, float scale = 1)
    {
        var context = await browser.Browser.NewContextAsync(new()
        {
            BaseURL = Address,
            ViewportSize = new() { Width = width, Height = height },
            JavaScriptEnabled = scripts,
            ColorScheme = scheme,
            DeviceScaleFactor = scale,
        });
        context.SetDefaultTimeout(10_000);
        var page = await context.NewPageAsync();
        await page.GotoAsync(address);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }
}
