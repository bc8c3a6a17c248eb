using Proveout.Web.Pages.Stopwatch;

namespace Proveout.Web.Tests;

public sealed class StopwatchTests
{
    [Theory]
    [InlineData("1000", "84400", "1:23.4", "83.4", true)]
    [InlineData("1000", null, "1:39.0", "99.0", false)]
    public void It_shows_the_time_between_two_presses_or_until_now(string from, string? to, string shown, string seconds, bool stopped)
    {
        var view = StopwatchView.Of(from, to, nowMilliseconds: 100_000);
        Assert.Equal((shown, seconds, stopped), (view.Elapsed, view.Seconds, view.IsStopped));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("-5")]
    [InlineData("soon")]
    [InlineData("200000")]
    public void A_start_that_makes_no_sense_is_none(string? from) => Assert.Null(StopwatchView.Of(from, null, nowMilliseconds: 100_000).FromMilliseconds);

    [Fact]
    public async Task Without_scripts_two_presses_give_a_time()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var running = (await visitor.GetAsync("/stopwatch/start")).Location!;
        Assert.Contains(">Stop<", (await visitor.GetAsync(running)).Html, StringComparison.Ordinal);
        var stopped = (await visitor.GetAsync(running.Replace("stopwatch?", "stopwatch/stop?", StringComparison.Ordinal))).Location!;
        Assert.Contains("It took", (await visitor.GetAsync(stopped)).Text, StringComparison.Ordinal);
    }
}
