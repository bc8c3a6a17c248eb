using System.Diagnostics;
using System.Text;
using Proveout.Web.Tests.Samples;

namespace Proveout.Web.Tests;

/// <summary>The largest sample through the real bench and journal.</summary>
public sealed class SizeAndSpeedTests(ITestOutputHelper output) : IAsyncLifetime
{
    private const string Largest = "alderbrook";

    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await BenchServer.StartAsync(machine: Largest);
        _visitor = _server.Visit();
        foreach (var number in Enumerable.Range(1, 20))
        {
            var step = await _server.StepAsync(number);
            await _visitor.SendAsync(_server.Check(step), "reading", ("text", number == 20 ? Typed.Bad(step) : Typed.Good(step)));
        }
    }

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Every_page_is_below_150_kB()
    {
        var state = await _server.StateAsync();
        string[] addresses =
        [
            "/", _server.Check(state.Steps[19]), _server.Check(state.Steps[20]), _server.Record, $"/builds/{_server.Build.Id}/checks",
            .. from page in new[] { "plan", "plan/threes", "walk", "energise", "ask", "paper", "paper?list=wire-list", "paper?list=terminations", "heat", "air", "belts", "settings", "acceptance", "stages", "review", "edit", "edit/parts", "edit/conductors" }
               select $"/machines/{Largest}/{page}",
        ];
        foreach (var address in addresses)
        {
            var bytes = Encoding.UTF8.GetByteCount((await _visitor.GetAsync(address)).Html);
            output.WriteLine($"{address}: {bytes} bytes");
            Assert.True(bytes < 150_000, $"{address} has {bytes} bytes.");
        }
    }

    [Fact]
    public async Task Nineteen_of_twenty_bench_pages_take_under_20_ms()
    {
        var address = _server.Check(await _server.StepAsync(20));
        var best = double.MaxValue;
        // The computer may be busy with something else: the best of five batches of 100 counts.
        for (var batch = 0; batch < 5 && best >= 20; batch++)
            best = Math.Min(best, await NinetyFifthOfAsync(address, 100));
        output.WriteLine($"95th percentile: {best:0.0} ms");
        Assert.True(best < 20, $"The 95th percentile is {best:0.0} ms.");
    }

    private async Task<double> NinetyFifthOfAsync(string address, int count)
    {
        var milliseconds = new List<double>();
        for (var i = 0; i < count; i++)
        {
            var start = Stopwatch.GetTimestamp();
            await _visitor.GetAsync(address);
            milliseconds.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return milliseconds.Order().ElementAt((int)(count * 0.95));
    }
}
