using System.Net;
using System.Text.Json;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class HealthPageTests
{
    [Fact]
    public async Task A_sound_bench_is_alive_and_ready_and_says_which_version_it_is()
    {
        await using var bench = await WatchedBench.StartAsync();
        using var visitor = bench.Visit();

        var live = await visitor.GetAsync("/health/live");
        var ready = await visitor.GetAsync("/health/ready");
        var page = await visitor.GetAsync("/health");

        Assert.Equal((HttpStatusCode.OK, "alive\n"), (live.Status, live.Html));
        Assert.Equal((HttpStatusCode.OK, "application/json"), (ready.Status, ready.Header("Content-Type")));
        using var health = JsonDocument.Parse(ready.Html);
        Assert.Equal("proveout-health 1", health.RootElement.GetProperty("format").GetString());
        Assert.True(health.RootElement.GetProperty("isReady").GetBoolean());
        Assert.Equal(ProgramVersion.Number, health.RootElement.GetProperty("version").GetString());
        Assert.Contains($"Proveout {ProgramVersion.Number}", page.Text, StringComparison.Ordinal);
        Assert.Contains("Good. The journal can be written.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_that_cannot_write_is_alive_and_not_ready_and_says_what_to_do()
    {
        await using var bench = await WatchedBench.StartAsync(health: new SickBench());
        using var visitor = bench.Visit();

        var ready = await visitor.GetAsync("/health/ready");
        var page = await visitor.GetAsync("/health");

        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/health/live")).Status);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, ready.Status);
        Assert.False(HealthText.Read(ready.Html)!.IsReady);
        Assert.Contains("Not good. The journal cannot be written. Make space.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_front_page_leads_to_it()
    {
        await using var bench = await WatchedBench.StartAsync();
        using var visitor = bench.Visit();

        Assert.Contains("href=\"/health\"", (await visitor.GetAsync("/")).Html, StringComparison.Ordinal);
    }

    private sealed class SickBench : IHealthDesk
    {
        public Task<BenchHealth> LookAsync(CancellationToken cancellation) =>
            Task.FromResult(new BenchHealth("0.0.0", [new HealthFinding("journal-write", false, "The journal cannot be written.", "Make space.")]));
    }
}
