using System.Globalization;
using System.Net;

namespace Proveout.Web.Tests;

public sealed class HeatLogPageTests : IAsyncLifetime
{
    // Too few rows to judge much, few enough to paste: 30 s off, then a rise of 2 K a second.
    private static readonly string Log = "time [s];nozzle temperature [degC];output [%]\n" + string.Concat(Enumerable.Range(0, 110).Select(second =>
        string.Create(CultureInfo.InvariantCulture, $"{second};{22 + (second < 32 ? 0 : 2 * (second - 32)) + (0.1 * (second % 3))};{(second < 30 ? 0 : 100)}\n")));

    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync() => _visitor = (_server = await BenchServer.StartAsync()).Visit();

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    private string Address => $"/machines/{_server.Build.MachineId}/heat/log";

    [Fact]
    public async Task A_log_is_judged_drawn_and_kept_in_the_record_with_its_file()
    {
        var page = await _visitor.SendAsync(Address, "heat-log", ("log", Log), ("body", ""), ("build", _server.Build.Id), ("title", "First warm-up"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("110 rows", page.Text, StringComparison.Ordinal);
        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measured: First warm-up.", (await _visitor.GetAsync($"/builds/{_server.Build.Id}/record")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_that_cannot_be_read_is_refused_with_its_line_and_kept_in_the_form()
    {
        var page = await _visitor.SendAsync(Address, "heat-log", ("log", "time [s],temperature\n0,294.2\n1,294.1"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("in kelvin that would be a room at", page.Text, StringComparison.Ordinal);
        Assert.Contains("1,294.1", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_log_it_asks_for_one_and_without_a_machine_there_is_no_page()
    {
        Assert.Contains("There is no log.", (await _visitor.SendAsync(Address, "heat-log", ("log", ""))).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await _visitor.GetAsync("/machines/none/heat/log")).Status);
    }

    [Fact]
    public async Task Readings_noted_by_hand_become_a_log_that_is_judged()
    {
        var first = await _visitor.SendAsync($"{Address}/by-hand", "by-hand", ("shown", "21,2"), ("output", "off"), ("do", "note"));
        Assert.Contains("1 reading of", first.Text, StringComparison.Ordinal);
        var refused = await _visitor.PostAsync($"{Address}/by-hand", Visitor.Fill(first.HiddenFields("by-hand"), ("shown", "warm"), ("output", "full"), ("do", "note")));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("`warm` is no temperature", refused.Text, StringComparison.Ordinal);
        var second = await _visitor.PostAsync($"{Address}/by-hand", Visitor.Fill(refused.HiddenFields("by-hand"), ("shown", "21.5"), ("output", "full"), ("do", "note")));

        Assert.Contains("2 readings of", second.Text, StringComparison.Ordinal);
        Assert.Contains("temperature [degC]", second.Html, StringComparison.Ordinal);
        Assert.Contains("1 reading of", (await _visitor.PostAsync($"{Address}/by-hand", Visitor.Fill(second.HiddenFields("by-hand"), ("output", "full"), ("do", "take-back")))).Text, StringComparison.Ordinal);
    }
}
