using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Proveout.Web;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>The bench on a free port of this computer, with one build of a sample started.</summary>
public sealed class BenchSite : IAsyncDisposable
{
    private WebApplication _app;
    private readonly SampleBench _samples;

    private BenchSite(WebApplication app, SampleBench samples, BuildSummary build) =>
        (_app, _samples, Build, Address) = (app, samples, build, app.Urls.First());

    public IBench Bench => _samples.Bench;

    public BuildSummary Build { get; }

    /// <summary>A machine that may be changed.</summary>
    public string Own { get; private init; } = "";

    /// <summary>A machine of the guided start, with all its guesses.</summary>
    public string Described { get; private init; } = "";

    public string Address { get; }

    /// <summary>Breaks the link: nothing answers at the address any more.</summary>
    public async Task StopAsync()
    {
        using var grace = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        await _app.StopAsync(grace.Token);
        await _app.DisposeAsync();
    }

    /// <summary>Mends it: the same journal at the same address, with the guards of a new process.</summary>
    public async Task StartAgainAsync()
    {
        _app = BenchHost.Build(new BenchHostOptions { Port = new Uri(Address).Port }, _samples.Desks);
        await _app.StartAsync();
    }

    public static async Task<BenchSite> StartAsync()
    {
        var samples = await SampleBench.OpenAsync();
        var started = await samples.Bench.StartAsync(new StartBuild(SampleBench.Machine, "oven-7", "Mara Lindt", ""), default);
        var own = (await samples.Desks.Editing!.CopyAsync(SampleBench.Machine, "Workshop machine", "Mara Lindt", default)).Value!.Id;
        var described = (await samples.Desks.Starting!.MakeAsync(new Dictionary<string, string> { [StartQuestions.Name] = "Hill bench" }, "Mara Lindt", default)).Value!.Id;
        var app = BenchHost.Build(new BenchHostOptions(), samples.Desks);
        await app.StartAsync();
        return new BenchSite(app, samples, started.Value!) { Own = own, Described = described };
    }

    public string Check(BenchStep step) => $"/builds/{Build.Id}/checks/{step.Check.Id}";

    public async Task<BenchState> StateAsync() => (await Bench.StateAsync(Build.Id, default))!;

    /// <summary>The step at a place in the order, from 1.</summary>
    public async Task<BenchStep> StepAsync(int number) => (await StateAsync()).Steps[number - 1];

    public async Task EnterAsync(BenchStep step, string text) =>
        Assert.NotNull((await Bench.EnterReadingAsync(Build.Id, new ReadingRequest(step.Check.Id, text, "Mara Lindt", Guid.NewGuid()), default)).Value);

    /// <summary>The second check passed, the third failed.</summary>
    public async Task PrepareAsync()
    {
        await EnterAsync(await StepAsync(2), Typed.Good(await StepAsync(2)));
        await EnterAsync(await StepAsync(3), Typed.Bad(await StepAsync(3)));
    }

    /// <summary>A page in a browser of its own: no cookie is shared with another.</summary>
    public async Task<IPage> OpenAsync(
        BrowserFixture browser, string address, int width = 390, int height = 844, bool scripts = true, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await browser.Browser.NewContextAsync(new()
        {
            BaseURL = Address,
            ViewportSize = new() { Width = width, Height = height },
            JavaScriptEnabled = scripts,
            ColorScheme = scheme,
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
        await _samples.DisposeAsync();
    }
}
