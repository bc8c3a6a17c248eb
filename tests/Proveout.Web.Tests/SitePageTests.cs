using System.Net;
using Proveout.Web.Tests.Samples;

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

    [Fact]
    public async Task The_front_page_lists_builds_and_machines()
    {
        var page = await _visitor.GetAsync("/");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("oven-7", page.Text, StringComparison.Ordinal);
        Assert.All(_server.Bench.Machines(), machine => Assert.Contains($"{machine.PartCount} parts, {machine.ConductorCount} conductors.", page.Text, StringComparison.Ordinal));
        Assert.Contains("Mains voltage", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_build_is_started_and_its_builder_remembered()
    {
        var sent = await _visitor.SendAsync("/", "start", ("machine", SampleBench.Machine), ("serial", "oven-8"), ("builder", "Ida"));
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
        var second = await _server.StepAsync(2);
        await _visitor.SendAsync(_server.Check(second), "reading", ("text", Typed.Good(second)));
        var text = (await _visitor.GetAsync($"/builds/{_server.Build.Id}/checks")).Text;
        var steps = (await _server.StateAsync()).Steps;
        Assert.Contains($"1. {steps[0].Check.Title} Pass, {steps[0].ReadingShown}", text, StringComparison.Ordinal);
        Assert.Contains($"2. {steps[1].Check.Title} Do this now", text, StringComparison.Ordinal);
        Assert.Contains($"{steps.Count}. {steps[^1].Check.Title} To do", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plan_shows_coverage_expectations_and_what_is_left_to_the_eye()
    {
        var plan = _server.Bench.Plan(SampleBench.Machine)!;
        var text = (await _visitor.GetAsync($"/machines/{SampleBench.Machine}/plan")).Text;
        Assert.Contains($"They surely catch {plan.Caught} of the {plan.Faults} mistakes that were simulated", text, StringComparison.Ordinal);
        Assert.Contains(plan.Optimality, text, StringComparison.Ordinal);
        Assert.All(plan.Coverage, kind => Assert.Contains($"{kind.Kind} {kind.Caught} of {kind.Faults}", text, StringComparison.Ordinal));
        Assert.All(plan.Uncovered, group => Assert.Contains(group.Sentence, text, StringComparison.Ordinal));
        Assert.All(plan.Groups.SelectMany(group => group.Checks), planned =>
            Assert.Contains($"{planned.Check.Title} Should read {planned.Expected}", text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_plan_says_the_same_time_wherever_it_says_one()
    {
        var text = (await _visitor.GetAsync($"/machines/{SampleBench.Machine}/plan")).Text;
        var minutes = Math.Ceiling(_server.Bench.Plan(SampleBench.Machine)!.Minutes);
        Assert.InRange(minutes, 1, 59);
        Assert.Contains($"set-ups, about {minutes}\u00A0min.", text, StringComparison.Ordinal);
        Assert.Contains($"In this order about {minutes}\u00A0min:", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plan_shows_every_caution_before_the_first_instruction_it_belongs_to()
    {
        var text = (await _visitor.GetAsync($"/machines/{SampleBench.Machine}/plan")).Text;
        foreach (var setUp in _server.Bench.Plan(SampleBench.Machine)!.Groups.Select(group => group.SetUp))
            Assert.All(setUp.Cautions, caution => Assert.InRange(
                text.IndexOf(caution, StringComparison.Ordinal), 1, text.LastIndexOf(setUp.Instructions[0], StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_plan_leads_to_what_it_does_against_three_mistakes_with_what_shows_those_that_it_misses()
    {
        var address = $"/machines/{SampleBench.Machine}/plan/threes";
        Assert.Contains($"href=\"{address}\"", (await _visitor.GetAsync($"/machines/{SampleBench.Machine}/plan")).Html, StringComparison.Ordinal);
        var threes = _server.Bench.Threes(SampleBench.Machine)!.Value!;
        var page = await _visitor.GetAsync(address);
        var text = page.Text.Replace('\u00A0', ' ');
        Assert.Contains(threes.Summary, text, StringComparison.Ordinal);
        Assert.NotEmpty(threes.Examples);
        Assert.All(threes.Examples, example => Assert.Contains($"{string.Join(" And: ", example.Mistakes)} Instead: {string.Join(" ", example.OtherEvidence)}", text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_there_are_too_many_threes_to_wait_for_the_page_says_so_and_what_to_do()
    {
        await using var server = await BenchServer.StartAsync(CrowdedBench.Of);
        using var visitor = server.Visit();
        var page = await visitor.GetAsync($"/machines/{SampleBench.Machine}/plan/threes");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains($"{CrowdedBench.Why.Message} {CrowdedBench.Why.Mend}", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Three_mistakes_on_a_machine_that_is_not_there_are_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _visitor.GetAsync("/machines/none/plan/threes")).Status);

    [Fact]
    public async Task The_record_shows_readings_deviations_signatures_and_the_last_hash()
    {
        var first = await _server.StepAsync(1);
        await _visitor.SendAsync(_server.Check(first), "reading", ("text", Typed.Good(first)));
        await _visitor.SendAsync(_server.Record, "deviation", ("subject", "A1"), ("note", "A longer lead is fitted."));
        await _visitor.SignOffAsync(_server.Record, ("person", "Ida"), ("role", "checker"), ("statement", "I saw it."));
        var state = await _server.StateAsync();
        var text = (await _visitor.GetAsync(_server.Record)).Text;
        Assert.Contains($"1. {first.Check.Title} {first.Expected} {state.Steps[0].ReadingShown} Pass Mara Lindt", text, StringComparison.Ordinal);
        Assert.Matches("A longer lead is fitted. Entry \\d+, Mara Lindt, [0-9: -]+UTC , on A1", text);
        Assert.Contains("Ida , checker: I saw it.", text, StringComparison.Ordinal);
        Assert.Contains(state.LastHash, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_record_offers_a_report_for_paper()
    {
        var address = $"/builds/{_server.Build.Id}/report.pdf";
        Assert.Contains($"href=\"{address}\"", (await _visitor.GetAsync(_server.Record)).Html, StringComparison.Ordinal);
        var report = await _visitor.GetAsync(address);
        Assert.Equal("application/pdf", report.Header("Content-Type"));
        Assert.StartsWith("%PDF-", report.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signature_without_a_statement_is_refused()
    {
        var page = await _visitor.SignOffAsync(_server.Record, ("person", "Ida"), ("statement", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("A signature needs a name and a statement.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photograph_is_attached_shown_and_handed_out_as_it_came()
    {
        var sent = await _visitor.SendPhotoAsync(_server.Check(await _server.StepAsync(1)), Pixel, "image/png", "Bond at the panel");
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        var note = (await _server.StateAsync()).Deviations[0];
        Assert.Contains("alt=\"Photograph: Bond at the panel\"", (await _visitor.GetAsync(sent.Location!)).Html, StringComparison.Ordinal);
        Assert.Equal(Pixel, await _visitor.Client.GetByteArrayAsync($"/builds/{_server.Build.Id}/photos/{note.PhotoSha256}"));
    }

    [Fact]
    public async Task A_photograph_above_12_MB_is_refused_with_its_caption_kept()
    {
        var page = await _visitor.SendPhotoAsync(_server.Check(await _server.StepAsync(1)), new byte[12_000_001], "image/png", "Bond at the panel");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("bond.png is larger than 12 MB.", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"Bond at the panel\"", page.Html, StringComparison.Ordinal);
        Assert.Empty((await _server.StateAsync()).Deviations);
    }

    [Fact]
    public async Task Other_windows_are_told_of_an_entry()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(10));
        var last = (await _server.StateAsync()).LastSequence;
        await using var stream = await _visitor.Client.GetStreamAsync($"/builds/{_server.Build.Id}/events?after={last}", stop.Token);
        using var reader = new StreamReader(stream);
        Assert.Equal(["event: watching", $"data: {last}", ""], await LinesAsync(reader, 3, stop.Token));
        using var other = _server.Visit();
        await other.SendAsync(_server.Check(await _server.StepAsync(1)), "reading", ("text", "105"));
        Assert.Equal(["event: entered", $"data: {last + 1}", $"id: {last + 1}"], await LinesAsync(reader, 3, stop.Token));
    }

    private static async Task<List<string?>> LinesAsync(StreamReader reader, int count, CancellationToken stop)
    {
        var lines = new List<string?>();
        while (lines.Count < count)
            lines.Add(await reader.ReadLineAsync(stop));
        return lines;
    }
}
