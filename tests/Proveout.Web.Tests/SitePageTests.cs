using System.Net;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class SitePageTests : IAsyncLifetime
{
    // The smallest PNG there is: one grey pixel.
    private static readonly byte[] Pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");

    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync() => _visitor = (_server = await BenchServer.StartAsync()).Visit();

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    private string Record => $"/builds/{_server.Build.Id}/record";

    [Fact]
    public async Task The_front_page_lists_builds_and_machines()
    {
        var page = await _visitor.GetAsync("/");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("oven-7", page.Text, StringComparison.Ordinal);
        Assert.Contains("4 parts, 7 conductors. Mains voltage", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_build_is_started_and_its_builder_remembered()
    {
        var sent = await _visitor.SendAsync("/", "start", ("machine", "small-oven"), ("serial", "oven-8"), ("builder", "Ida"));
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Equal("Ida", _visitor.Cookies["person"]!.Value);
        Assert.Contains("oven-8", (await _visitor.GetAsync("/")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_start_without_a_machine_is_refused_and_keeps_what_was_typed()
    {
        var page = await _visitor.SendAsync("/", "start", ("serial", "oven-8"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("No machine is chosen. Choose one", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"oven-8\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_shows_every_check_with_its_status()
    {
        await _visitor.SendAsync(_server.CheckAddress("heater"), "reading", ("text", "105"));
        var text = (await _visitor.GetAsync($"/builds/{_server.Build.Id}/checks")).Text;
        Assert.Contains("1. Inlet earth to rear panel Do this now", text, StringComparison.Ordinal);
        Assert.Contains("4. Plate heater Pass, 105 Ω", text, StringComparison.Ordinal);
        Assert.Contains("6. Temperature sensor To do", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plan_shows_coverage_expectations_and_what_is_left_to_the_eye()
    {
        var text = (await _visitor.GetAsync("/machines/small-oven/plan")).Text;
        Assert.Contains("6 checks in 2 set-ups, about 15 min. They surely catch 20 of the 30 mistakes", text, StringComparison.Ordinal);
        Assert.Contains("Poor joint 5 of 14 35 %", text, StringComparison.Ordinal);
        Assert.Contains("Should read 98.2 Ω to 113.5 Ω", text, StringComparison.Ordinal);
        Assert.Contains("Tug each wire, and look for bare strands.", text, StringComparison.Ordinal);
        Assert.Contains("No cheaper plan catches the same mistakes", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_record_shows_readings_deviations_signatures_and_the_last_hash()
    {
        await _visitor.SendAsync(_server.CheckAddress("heater"), "reading", ("text", "105"));
        await _visitor.SendAsync(Record, "deviation", ("subject", "E1"), ("note", "A heater of 120 W is fitted."));
        await _visitor.SendAsync(Record, "sign-off", ("person", "Ida"), ("role", "checker"), ("statement", "I saw it."));
        var text = (await _visitor.GetAsync(Record)).Text;
        Assert.Contains("4. Plate heater 98.2 Ω to 113.5 Ω 105 Ω Pass Mara Lindt", text, StringComparison.Ordinal);
        Assert.Contains("A heater of 120 W is fitted. Entry 3, Mara Lindt, 2031-03-04 09:03 UTC , on E1", text, StringComparison.Ordinal);
        Assert.Contains("Ida , checker: I saw it.", text, StringComparison.Ordinal);
        Assert.Contains(new string('0', 63) + "4", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signature_without_a_statement_is_refused()
    {
        var page = await _visitor.SendAsync(Record, "sign-off", ("person", "Ida"), ("statement", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("A signature needs a name and a statement.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photograph_is_attached_shown_and_handed_out_as_it_came()
    {
        var sent = await _visitor.SendPhotoAsync(_server.CheckAddress("heater"), Pixel, "image/png", "Bond at the panel");
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        var note = (await StateAsync()).Deviations[0];
        Assert.Contains("alt=\"Photograph: Bond at the panel\"", (await _visitor.GetAsync(sent.Location!)).Html, StringComparison.Ordinal);
        Assert.Equal(Pixel, await _visitor.Client.GetByteArrayAsync($"/builds/{_server.Build.Id}/photos/{note.PhotoSha256}"));
    }

    [Fact]
    public async Task A_photograph_above_12_MB_is_refused_with_its_caption_kept()
    {
        var page = await _visitor.SendPhotoAsync(_server.CheckAddress("heater"), new byte[12_000_001], "image/png", "Bond at the panel");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("bond.png is larger than 12 MB.", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"Bond at the panel\"", page.Html, StringComparison.Ordinal);
        Assert.Empty((await StateAsync()).Deviations);
    }

    [Fact]
    public async Task Other_windows_are_told_of_an_entry()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(10));
        await using var stream = await _visitor.Client.GetStreamAsync($"/builds/{_server.Build.Id}/events?after=1", stop.Token);
        using var reader = new StreamReader(stream);
        Assert.Equal(["event: watching", "data: 1", ""], await LinesAsync(reader, 3, stop.Token));
        using var other = _server.Visit();
        await other.SendAsync(_server.CheckAddress("heater"), "reading", ("text", "105"));
        Assert.Equal(["event: entered", "data: 2", "id: 2"], await LinesAsync(reader, 3, stop.Token));
    }

    private static async Task<List<string?>> LinesAsync(StreamReader reader, int count, CancellationToken stop)
    {
        var lines = new List<string?>();
        while (lines.Count < count)
            lines.Add(await reader.ReadLineAsync(stop));
        return lines;
    }

    private async Task<BenchState> StateAsync() => (await _server.Bench.StateAsync(_server.Build.Id, default))!;
}
