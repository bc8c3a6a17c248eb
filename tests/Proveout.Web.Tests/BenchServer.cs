using Microsoft.AspNetCore.Builder;
using Proveout.Web.Tests.InMemory;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>The bench on a free port of this computer, with one build started.</summary>
public sealed class BenchServer : IAsyncDisposable
{
    private readonly WebApplication _app;

    private BenchServer(WebApplication app, IBench bench, BuildSummary build) => (_app, Bench, Build) = (app, bench, build);

    public IBench Bench { get; }

    public BuildSummary Build { get; }

    public Uri Address => new(_app.Urls.First());

    public static Task<BenchServer> StartAsync(string serial = "oven-7", string builder = "Mara Lindt") => StartAsync(new InMemoryBench(), serial, builder);

    public static async Task<BenchServer> StartAsync(IBench bench, string serial, string builder)
    {
        var started = await bench.StartAsync(new StartBuild(bench.Machines()[0].Id, serial, builder, ""), default);
        var app = BenchHost.Build(new BenchHostOptions(), bench);
        await app.StartAsync();
        return new BenchServer(app, bench, started.Value!);
    }

    /// <summary>A browser without a screen: keeps cookies, follows nothing by itself.</summary>
    public Visitor Visit() => new(Address);

    public string CheckAddress(string checkId) => $"/builds/{Build.Id}/checks/{checkId}";

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }
}
