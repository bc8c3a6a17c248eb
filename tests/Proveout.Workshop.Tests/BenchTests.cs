using Proveout.Journal;

namespace Proveout.Workshop.Tests;

public sealed class BenchTests
{
    [Fact]
    public async Task A_new_build_starts_at_the_first_check_of_the_plan()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var state = await fixture.Bench.StateAsync((await fixture.StartAsync()).Id, default);
        Assert.Equal(state!.Steps[0].Check.Id, state.CurrentCheckId);
        Assert.Equal(Samples.Pennywort.Plan.Checks.Count, state.Steps.Count);
    }

    [Fact]
    public async Task A_reading_as_expected_passes_and_leads_on()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var first = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0];
        var state = (await EnterAsync(fixture, build, first.Check.Id, GoodText(first))).Value!;
        Assert.Equal(StepStatus.Passed, state.FindStep(first.Check.Id)!.Status);
        Assert.Equal(state.Steps[1].Check.Id, state.CurrentCheckId);
        Assert.Empty(state.Suspects);
    }

    [Fact]
    public async Task A_reading_that_is_off_fails_and_names_suspects()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps.First(step => step.Check.Expectation.High < 2).Check.Id;
        var state = (await EnterAsync(fixture, build, check, "OL")).Value!;
        Assert.Equal(StepStatus.Failed, state.FindStep(check)!.Status);
        Assert.NotEmpty(state.Suspects);
        Assert.InRange(state.Suspects.Sum(suspect => suspect.Probability), 0.3, 1.000001);
    }

    [Fact]
    public async Task A_reading_that_would_be_right_with_another_plug_in_says_so_before_any_suspect()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        // The paste sensor (1.1 kilohms) with its plug left in its socket: the input's pull-up and supply lie beside it.
        var check = Samples.Pennywort.Dictionary.Checks.First(candidate =>
            candidate.SetUp == "apart" && candidate.Kind == "resistance" && candidate.Points.All(point => point.Place is "TEMP0-S" or "TEMP0-0V" && point.Side == "plug"));
        var state = (await EnterAsync(fixture, build, check.Id, "500")).Value!;

        Assert.Equal(StepStatus.Failed, state.FindStep(check.Id)!.Status);
        Assert.Contains("All plugs mated", state.PlugHint, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_entered_again_is_a_correction_and_the_first_stays_in_the_journal()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var first = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0];
        await EnterAsync(fixture, build, first.Check.Id, "4k7");
        var state = (await EnterAsync(fixture, build, first.Check.Id, GoodText(first))).Value!;
        Assert.Equal(StepStatus.Passed, state.FindStep(first.Check.Id)!.Status);
        var entries = await fixture.Journal.ReadAsync(Guid.Parse(build.Id));
        Assert.Contains(entries, entry => entry.Content is ReadingEntered { Reading.Text: "4k7" });
        Assert.Contains(entries, entry => entry.Content is ReadingCorrected);
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_entry()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        var request = new ReadingRequest(check, "0.3", "Ada", Guid.NewGuid());
        var once = (await fixture.Bench.EnterReadingAsync(build.Id, request, default)).Value!;
        var twice = (await fixture.Bench.EnterReadingAsync(build.Id, request, default)).Value!;
        Assert.Equal(once.LastSequence, twice.LastSequence);
    }

    [Fact]
    public async Task An_entry_made_on_an_open_check_does_not_overturn_what_somebody_else_entered_meanwhile()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var step = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0];
        await fixture.Bench.EnterReadingAsync(build.Id, new ReadingRequest(step.Check.Id, GoodText(step), "Ida", Guid.NewGuid()), default);
        var late = new ReadingRequest(step.Check.Id, "4k7", "Ada", Guid.NewGuid()) { SeenOpen = true };
        var refused = await fixture.Bench.EnterReadingAsync(build.Id, late, default);
        Assert.Contains("Meanwhile Ida entered", Assert.Single(refused.Diagnostics).Message, StringComparison.Ordinal);
        var skipped = await fixture.Bench.SkipAsync(build.Id, new SkipRequest(step.Check.Id, "No time.", "Ada", Guid.NewGuid()) { SeenOpen = true }, default);
        Assert.NotEmpty(skipped.Diagnostics);
        Assert.Equal(StepStatus.Passed, (await fixture.Bench.StateAsync(build.Id, default))!.FindStep(step.Check.Id)!.Status);
    }

    [Fact]
    public async Task Two_entries_of_one_person_for_a_check_that_stood_open_are_a_reading_and_its_correction_however_often_they_are_sent()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        ReadingRequest[] waiting = [new(check, "4k7", "Ada", Guid.NewGuid()) { SeenOpen = true }, new(check, "0.3", "Ada", Guid.NewGuid()) { SeenOpen = true }];
        foreach (var request in waiting.Concat(waiting))
            Assert.NotNull((await fixture.Bench.EnterReadingAsync(build.Id, request, default)).Value);
        var readings = (await fixture.Journal.ReadAsync(Guid.Parse(build.Id))).Select(entry => entry.Content).Where(content => content is ReadingEntered or ReadingCorrected);
        Assert.Collection(readings, first => Assert.IsType<ReadingEntered>(first), second => Assert.IsType<ReadingCorrected>(second));
    }

    [Theory]
    [InlineData("OL")]
    [InlineData("open")]
    [InlineData("-")]
    public async Task Over_range_can_be_typed_in_the_ways_meters_show_it(string text)
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        var state = (await EnterAsync(fixture, build, check, text)).Value!;
        Assert.Equal("OL", state.FindStep(check)!.ReadingShown);
    }

    [Theory]
    [InlineData("0.3", 0.3)]
    [InlineData("4k7", 4700)]
    [InlineData("4,7 kΩ", 4700)]
    public void A_resistance_can_be_typed_in_the_ways_people_write_it(string text, double ohms) => Assert.Equal(ohms, ReadingText.TryRead(text)!.Value, 9);

    [Fact]
    public async Task What_is_no_reading_is_refused_with_what_can_be_typed()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        var refusal = Assert.Single((await EnterAsync(fixture, build, check, "about right")).Diagnostics);
        Assert.Contains("about right", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("4k7", refusal.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_is_left_out_only_with_a_reason()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        Assert.NotEmpty((await fixture.Bench.SkipAsync(build.Id, new SkipRequest(check, " ", "Ada", Guid.NewGuid()), default)).Diagnostics);
        var state = (await fixture.Bench.SkipAsync(build.Id, new SkipRequest(check, "part not here yet", "Ada", Guid.NewGuid()), default)).Value!;
        Assert.Equal(StepStatus.Skipped, state.FindStep(check)!.Status);
        Assert.Equal("part not here yet", state.FindStep(check)!.Reason);
    }

    [Fact]
    public async Task A_second_bench_on_the_same_journal_sees_what_the_first_entered()
    {
        await using var one = await BenchFixture.OpenAsync();
        await using var two = await one.OpenAgainAsync();
        var build = await one.StartAsync();
        var check = (await two.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        await EnterAsync(one, build, check, "0.3");
        Assert.NotEqual(StepStatus.Open, (await two.Bench.StateAsync(build.Id, default))!.FindStep(check)!.Status);
    }

    [Fact]
    public async Task The_record_does_not_claim_zeroed_leads_that_nobody_stated()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var entries = await fixture.Journal.ReadAsync(Guid.Parse((await fixture.StartAsync()).Id));
        Assert.False(entries.Select(entry => entry.Content).OfType<InstrumentDeclared>().Single().LeadsZeroed);
    }

    [Fact]
    public async Task A_file_that_is_no_picture_is_refused_whatever_it_is_called()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var request = new PhotoRequest("E1", "heater", "heater.jpg", "image/jpeg", "<svg/>"u8.ToArray(), "Ada", Guid.NewGuid());
        Assert.NotEmpty((await fixture.Bench.AttachPhotoAsync(build.Id, request, default)).Diagnostics);
    }

    [Fact]
    public async Task The_report_holds_every_check_with_its_reading_and_the_last_hash()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var check = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0].Check.Id;
        var state = (await EnterAsync(fixture, build, check, "0.3")).Value!;
        var report = await new ReportCase(fixture.Bench, fixture.Journal, TimeProvider.System).OfAsync(build.Id, default);
        Assert.Equal(state.Steps.Count, report!.Rows.Count);
        Assert.Equal("0.30 Ω", report.Rows[0].Reading);
        Assert.Equal(state.LastHash, report.LastHash);
        Assert.NotEmpty(report.Cautions);
    }

    [Fact]
    public async Task The_report_counts_as_caught_only_what_the_checks_that_were_read_catch()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var reports = new ReportCase(fixture.Bench, fixture.Journal, TimeProvider.System);
        Assert.Equal(0, (await reports.OfAsync(build.Id, default))!.Coverage.Sum(kind => kind.Caught));
        var first = (await fixture.Bench.StateAsync(build.Id, default))!.Steps[0];
        await EnterAsync(fixture, build, first.Check.Id, GoodText(first));
        var caught = (await reports.OfAsync(build.Id, default))!.Coverage.Sum(kind => kind.Caught);
        Assert.InRange(caught, 1, Samples.Pennywort.Plan.Caught.Count - 1);
    }

    private static Task<Engine.Machine.Outcome<BenchState>> EnterAsync(BenchFixture fixture, BuildSummary build, string check, string text) =>
        fixture.Bench.EnterReadingAsync(build.Id, new ReadingRequest(check, text, "Ada", Guid.NewGuid()), default);

    private static string GoodText(BenchStep step) =>
        step.Check.Expectation.IsOverRangeOnly
            ? "OL"
            : ((step.Check.Expectation.Low + Math.Min(step.Check.Expectation.High, step.Check.Expectation.Low * 2 + 0.2)) / 2)
                .ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
}
