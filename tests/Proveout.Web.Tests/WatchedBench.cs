using Microsoft.AspNetCore.Builder;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>The bench as it is served to be watched.</summary>
internal sealed class WatchedBench : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly SampleBench _samples;

    private WatchedBench(WebApplication app, SampleBench samples) => (_app, _samples) = (app, samples);

    public IBench Bench => _samples.Bench;

    public static async Task<WatchedBench> StartAsync(bool metrics = false, IHealthDesk? health = null)
    {
        var samples = await SampleBench.OpenAsync();
        var app = BenchHost.Build(new BenchHostOptions { Metrics = metrics }, health is null ? samples.Desks : samples.Desks with { Health = health });
        await app.StartAsync();
        return new WatchedBench(app, samples);
    }

    public Visitor Visit() => new(new Uri(_app.Urls.First()));

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        await _samples.DisposeAsync();
    }
}
