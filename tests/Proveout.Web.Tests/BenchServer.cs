using System.Net;
using Microsoft.AspNetCore.Builder;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>The bench on a free port of this computer, with one build of a sample started.</summary>
internal sealed class BenchServer : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly SampleBench _samples;

    private BenchServer(WebApplication app, SampleBench samples, BuildSummary build) => (_app, _samples, Build) = (app, samples, build);

    public IBench Bench => _samples.Bench;

    public BuildSummary Build { get; }

    public Uri Address => new(_app.Urls.First());

    public string Record => $"/builds/{Build.Id}/record";

    public static Task<BenchServer> StartAsync(string serial = "oven-7", string builder = "Mara Lindt", string machine = SampleBench.Machine) =>
        StartAsync(bench => bench, serial, builder, machine);

    /// <summary>Starts a host that was told of a meter.</summary>
    public static Task<BenchServer> StartWithMeterAsync(DnsEndPoint meter) => StartAsync(bench => bench, meter: meter);

    /// <summary>Starts a host whose bench is wrapped by another.</summary>
    public static async Task<BenchServer> StartAsync(
        Func<IBench, IBench> wrap, string serial = "oven-7", string builder = "Mara Lindt", string machine = SampleBench.Machine, DnsEndPoint? meter = null)
    {
        var samples = await SampleBench.OpenAsync();
        var started = await samples.Bench.StartAsync(new StartBuild(machine, serial, builder, ""), default);
        var app = BenchHost.Build(new BenchHostOptions { Meter = meter }, samples.Desks with { Bench = wrap(samples.Bench) });
        await app.StartAsync();
        return new BenchServer(app, samples, started.Value!);
    }

    /// <summary>A browser without a screen: keeps cookies, follows nothing by itself.</summary>
    public Visitor Visit() => new(Address);

    public string Check(BenchStep step) => $"/builds/{Build.Id}/checks/{step.Check.Id}";

    public async Task<BenchState> StateAsync() => (await Bench.StateAsync(Build.Id, default))!;

    /// <summary>The step at a place in the order, from 1.</summary>
    public async Task<BenchStep> StepAsync(int number) => (await StateAsync()).Steps[number - 1];

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        await _samples.DisposeAsync();
    }
}
