using System.Text.Json;
using System.Text.RegularExpressions;

namespace Proveout.Web.Tests;

public sealed partial class OfflinePageTests
{
    [Fact]
    public async Task The_bench_is_installable_with_icons_of_its_own()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var manifest = await visitor.GetAsync("/manifest.webmanifest");
        Assert.StartsWith("application/manifest+json", manifest.Header("Content-Type"), StringComparison.Ordinal);
        using var facts = JsonDocument.Parse(manifest.Html);
        Assert.Equal("standalone", facts.RootElement.GetProperty("display").GetString());
        foreach (var icon in facts.RootElement.GetProperty("icons").EnumerateArray())
        {
            using var answer = await visitor.Client.GetAsync(icon.GetProperty("src").GetString());
            Assert.Equal(icon.GetProperty("type").GetString(), answer.Content.Headers.ContentType?.ToString());
        }
    }

    [Fact]
    public async Task Everything_that_the_worker_keeps_is_there()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var worker = await visitor.GetAsync("/worker.js");
        Assert.Contains("no-cache", worker.Header("Cache-Control"), StringComparison.Ordinal);
        string[] kept = ["/offline", .. Kept().Matches(worker.Html).Select(match => match.Value).Distinct()];
        Assert.True(kept.Length > 5);
        foreach (var address in kept)
        {
            using var answer = await visitor.Client.GetAsync(address);
            Assert.True(answer.IsSuccessStatusCode, address);
        }
    }

    [Theory]
    [InlineData("four point seven kilo ohm", "4.7 kΩ")]
    [InlineData("hello", null)]
    public async Task What_was_heard_comes_back_as_a_reading(string heard, string? reading)
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        using var answer = JsonDocument.Parse((await visitor.GetAsync($"/heard?text={Uri.EscapeDataString(heard)}&unit=%CE%A9")).Html);
        Assert.Equal(reading, answer.RootElement.GetProperty("reading").GetString());
    }

    [GeneratedRegex("/assets/[0-9a-f]{16}/[a-z0-9.-]+")]
    private static partial Regex Kept();
}
