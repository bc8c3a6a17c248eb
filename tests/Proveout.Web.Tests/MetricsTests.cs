using System.Net;
using System.Text.RegularExpressions;
using Proveout.Web.Hosting.Watching;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed partial class MetricsTests
{
    [Fact]
    public async Task Nothing_is_told_when_nobody_asked_to_measure()
    {
        await using var bench = await WatchedBench.StartAsync();
        using var visitor = bench.Visit();

        Assert.Equal(HttpStatusCode.NotFound, (await visitor.GetAsync("/metrics")).Status);
    }

    [Fact]
    public async Task Requests_are_counted_by_kind_of_page_and_not_by_address()
    {
        await using var bench = await WatchedBench.StartAsync(metrics: true);
        using var visitor = bench.Visit();
        var build = (await bench.Bench.StartAsync(new StartBuild("pennywort", "oven-7", "Mara Lindt", ""), default)).Value!;
        for (var i = 0; i < 3; i++)
            await visitor.GetAsync($"/builds/{build.Id}/record?code=4711");

        var text = (await visitor.GetAsync("/metrics")).Html;

        Assert.Matches("""(?m)^http_server_request_duration_seconds_count\{.*http_route="/builds/\{buildId\}/record".*\} 3$""", text);
        Assert.DoesNotContain(build.Id, text, StringComparison.Ordinal);
        Assert.DoesNotContain("4711", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_host_in_the_same_process_does_not_count()
    {
        await using var quiet = await WatchedBench.StartAsync(metrics: true);
        await using var busy = await WatchedBench.StartAsync(metrics: true);
        using (var visitor = busy.Visit())
            await visitor.GetAsync("/tension");

        using var asker = quiet.Visit();
        Assert.DoesNotContain("http_route=\"/tension\"", (await asker.GetAsync("/metrics")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entries_and_open_windows_are_counted_and_the_version_is_told()
    {
        await using var bench = await WatchedBench.StartAsync(metrics: true);
        using var visitor = bench.Visit();
        var build = (await bench.Bench.StartAsync(new StartBuild("pennywort", "oven-7", "Mara Lindt", ""), default)).Value!;
        var step = (await bench.Bench.StateAsync(build.Id, default))!.Steps[0];
        await using var window = await visitor.Client.GetStreamAsync($"/builds/{build.Id}/events?after=1");
        using var reader = new StreamReader(window);
        await reader.ReadLineAsync();
        await visitor.SendAsync($"/builds/{build.Id}/checks/{step.Check.Id}", "reading", ("text", Typed.Good(step)));

        var text = (await visitor.GetAsync("/metrics")).Html;

        // Other tests of this process write to journals of their own, so that at least so many are counted.
        Assert.True(Value(text, "proveout_journal_append_seconds_count") >= 1);
        Assert.True(Value(text, "proveout_bench_watching") >= 1);
        Assert.Contains($"proveout_version{{version=\"{ProgramVersion.Number}\"}} 1\n", text, StringComparison.Ordinal);
    }

    // The rules are those of OpenMetrics 1.0, "ABNF", "Overall structure" and "Metric types".
    [Fact]
    public async Task The_text_keeps_the_rules_of_its_format()
    {
        await using var bench = await WatchedBench.StartAsync(metrics: true);
        using var visitor = bench.Visit();
        await visitor.GetAsync("/");

        var page = await visitor.GetAsync("/metrics");

        Assert.Equal("application/openmetrics-text; version=1.0.0; charset=utf-8", page.Header("Content-Type"));
        Assert.EndsWith("\n# EOF\n", page.Html, StringComparison.Ordinal);
        var lines = page.Html.Split('\n')[..^2];
        Assert.All(lines, line => Assert.Matches(line[0] == '#' ? Descriptor() : Sample(), line));
        var families = lines.Where(line => line.StartsWith("# TYPE ", StringComparison.Ordinal)).Select(line => line.Split(' ')[2]).ToArray();
        Assert.Equal(families.Distinct(), families);
        Assert.True(families.Length > 10);
        Assert.Equal(lines.Where(line => line[0] != '#').Select(line => line[..line.LastIndexOf(' ')]).Distinct().Count(), lines.Count(line => line[0] != '#'));
    }

    [Fact]
    public void A_histogram_counts_everything_up_to_each_bound()
    {
        using var meter = new System.Diagnostics.Metrics.Meter("test");
        var family = MetricFamily.Of(meter.CreateHistogram<double>("test.length", "s", "How \"long\" \\ it took.", null, new() { HistogramBucketBoundaries = [0.1, 1] }));
        foreach (var value in new[] { 0.05, 0.1, 0.5, 7 })
            family.Take(value, [new("where", "a\"b\\c\nd")]);

        Assert.Equal(
            """
            # TYPE test_length_seconds histogram
            # UNIT test_length_seconds seconds
            # HELP test_length_seconds How \"long\" \\ it took.
            test_length_seconds_bucket{where="a\"b\\c\nd",le="0.1"} 2
            test_length_seconds_bucket{where="a\"b\\c\nd",le="1.0"} 3
            test_length_seconds_bucket{where="a\"b\\c\nd",le="+Inf"} 4
            test_length_seconds_count{where="a\"b\\c\nd"} 4
            test_length_seconds_sum{where="a\"b\\c\nd"} 7.65
            # EOF

            """,
            OpenMetricsText.Of([family]));
    }

    [Fact]
    public void What_a_stranger_sends_cannot_grow_the_memory()
    {
        using var meter = new System.Diagnostics.Metrics.Meter("test");
        var family = MetricFamily.Of(meter.CreateCounter<long>("test.words"));
        for (var i = 0; i < 10_000; i++)
            family.Take(1, [new("word", i)]);

        Assert.Equal(400, family.Series.Count());
    }

    private static double Value(string text, string name) =>
        double.Parse(Regex.Match(text, $"(?m)^{name} (.+)$").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex("""^# (TYPE [a-zA-Z_:][a-zA-Z0-9_:]* (counter|gauge|histogram)|UNIT [a-zA-Z_:][a-zA-Z0-9_:]*_(?<unit>seconds|bytes) \k<unit>|HELP [a-zA-Z_:][a-zA-Z0-9_:]* .*)$""")]
    private static partial Regex Descriptor();

    [GeneratedRegex("""^[a-zA-Z_:][a-zA-Z0-9_:]*(\{[a-zA-Z_][a-zA-Z0-9_]*="([^"\\\n]|\\["\\n])*"(,[a-zA-Z_][a-zA-Z0-9_]*="([^"\\\n]|\\["\\n])*")*\})? -?[0-9.]+(E[+-][0-9]+)?$""")]
    private static partial Regex Sample();
}
