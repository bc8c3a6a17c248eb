using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests.Builds;

public sealed class BuildsDeskTests : IAsyncLifetime
{
    // A check of the plan with a finite band, so that its readings have a middle and a spread.
    private static readonly Check Finite = Samples.Pennywort.Plan.Checks.Select(index => Samples.Pennywort.Dictionary.Checks[index])
        .First(check => check.Unit == "Ω" && check.Expectation.Low > 5 && double.IsFinite(check.Expectation.High));

    private BenchFixture _fixture = null!;

    public async ValueTask InitializeAsync() => _fixture = await BenchFixture.OpenAsync();

    public ValueTask DisposeAsync() => _fixture.DisposeAsync();

    [Fact]
    public async Task A_machine_that_nobody_built_has_an_empty_page()
    {
        var builds = await OfMachineAsync();
        Assert.Equal((0, 0, 0), (builds.Count, builds.Checks.Count, builds.ApartCount));
        Assert.StartsWith("Nothing yet", Assert.Single(builds.Learned), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_machine_that_is_not_there_has_no_page() => Assert.Null(await _fixture.Builds.OfMachineAsync("no-such", new BuildsQuery(), default));

    [Fact]
    public async Task A_reading_off_its_five_sisters_stands_out_and_says_so()
    {
        var middle = Middle;
        var ids = await ReadAsync([middle, middle * 1.002, middle * 0.998, middle * 1.001, middle, middle * 1.6]);

        var builds = await OfMachineAsync();

        var apart = Assert.Single(builds.Apart);
        Assert.Equal((ids[5], Finite.Id), (apart.BuildId, apart.CheckId));
        Assert.True(apart.Deviations > 3.5);
        Assert.Contains("above the median of its sisters", apart.Sentence, StringComparison.Ordinal);
        Assert.Equal(1, builds.Builds.Items.Single(row => row.Build.Id == ids[5]).Apart);
    }

    [Fact]
    public async Task With_four_sisters_it_cannot_be_told()
    {
        await ReadAsync([Middle, Middle, Middle, Middle, Middle * 1.6]);
        var spread = Assert.Single((await OfMachineAsync()).Checks.Items);
        Assert.Null(spread.Apart);
        Assert.Equal("Cannot tell whether one stands out: 5 of 6 readings that it takes.", spread.Told);
    }

    [Fact]
    public async Task Readings_that_differ_by_less_than_the_meter_tells_do_not_stand_out()
    {
        // One digit of 0.1 ohm between builds; the meter is right to 1 % and 3 digits.
        await ReadAsync([Middle, Middle, Middle, Middle, Middle, Middle, Middle + 0.1]);
        Assert.Equal("None stands out.", Assert.Single((await OfMachineAsync()).Checks.Items).Told);
    }

    [Fact]
    public async Task The_last_reading_counts_and_a_failure_before_it_is_remembered()
    {
        var build = await _fixture.StartAsync();
        await EnterAsync(build.Id, "OL");
        await EnterAsync(build.Id, Text(Middle));
        var spread = Assert.Single((await OfMachineAsync()).Checks.Items);
        Assert.Equal((1, 0, 1), (spread.Builds, spread.OverRange, spread.Failed));
    }

    [Fact]
    public async Task What_another_process_recorded_is_on_the_page_at_the_next_look()
    {
        await ReadAsync([Middle]);
        Assert.Equal(1, (await OfMachineAsync()).Count);
        await using var other = await _fixture.OpenAgainAsync();
        await other.StartAsync("other");
        Assert.Equal(2, (await OfMachineAsync()).Count);
        Assert.Equal(2, (await OfMachineAsync()).Builds.Items.Count);
    }

    [Fact]
    public async Task Progress_counts_checks_read_and_left_out()
    {
        var build = await _fixture.StartAsync();
        await EnterAsync(build.Id, Text(Middle));
        var left = Samples.Pennywort.Plan.Checks.Select(index => Samples.Pennywort.Dictionary.Checks[index].Id).First(check => check != Finite.Id);
        await _fixture.Bench.SkipAsync(build.Id, new(left, "Not there yet.", "Ada", Guid.NewGuid()), default);

        var row = Assert.Single((await OfMachineAsync()).Builds.Items);

        Assert.Equal((2, Samples.Pennywort.Plan.Checks.Count), (row.Done, row.Planned));
    }

    [Fact]
    public async Task Mistakes_found_are_counted_by_kind_and_what_they_teach_is_said()
    {
        var fault = Samples.Pennywort.Dictionary.Faults[0];
        foreach (var serial in new[] { "1", "2" })
            await _fixture.Bench.NoteMistakeAsync((await _fixture.StartAsync(serial)).Id, new(fault.Id, "", "Ada", Guid.NewGuid()), default);

        var builds = await OfMachineAsync();

        Assert.Equal(new MistakeCount(fault.Kind, fault.Sentence, 2, 2), Assert.Single(builds.Mistakes));
        Assert.Contains(builds.Learned, sentence => sentence.Contains("2 found where", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_part_of_the_serial_number_finds_a_build()
    {
        foreach (var serial in new[] { "oven-1", "oven-2", "plate-2" })
            await _fixture.StartAsync(serial);
        Assert.Equal(["oven-2", "oven-1"], (await _fixture.Builds.FindAsync(new("OVEN"), default)).Items.Select(build => build.Serial));
        Assert.Equal(0, (await _fixture.Builds.FindAsync(new("nobody"), default)).Count);
    }

    [Fact]
    public async Task A_long_list_comes_in_pages_and_a_page_beyond_the_last_is_the_last()
    {
        foreach (var number in Enumerable.Range(1, 31))
            await _fixture.StartAsync($"{number}");
        var last = await _fixture.Builds.FindAsync(new(Page: 99), default);
        Assert.Equal((2, 2, 31), (last.Page, last.Pages, last.Count));
        Assert.Equal("1", Assert.Single(last.Items).Serial);
    }

    [Fact]
    public async Task The_plot_of_a_check_has_as_many_builds_as_have_read_it()
    {
        await ReadAsync([Middle, Middle * 1.01, Middle * 1.02, Middle * 1.6]);
        var plot = (await _fixture.Builds.OfMachineAsync("pennywort", new(CheckId: Finite.Id), default))!.Plot!;
        var corners = Assert.Single(plot.Lines).Points;
        // Two corners for each bar, between the two that close the outline.
        Assert.Equal(4, corners.Skip(1).Take(corners.Count - 2).Chunk(2).Sum(bar => bar[0].Up));
        Assert.Contains("4 builds", plot.Description, StringComparison.Ordinal);
    }

    private static double Middle => (Finite.Expectation.Low + Finite.Expectation.High) / 2;

    private static string Text(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private async Task<MachineBuilds> OfMachineAsync() => (await _fixture.Builds.OfMachineAsync("pennywort", new BuildsQuery(), default))!;

    private async Task<string[]> ReadAsync(double[] readings)
    {
        var ids = new string[readings.Length];
        foreach (var (index, reading) in readings.Index())
        {
            ids[index] = (await _fixture.StartAsync($"{index + 1}")).Id;
            await EnterAsync(ids[index], Text(reading));
        }

        return ids;
    }

    private async Task EnterAsync(string build, string text) =>
        Assert.Empty((await _fixture.Bench.EnterReadingAsync(build, new(Finite.Id, text, "Ada", Guid.NewGuid()), default)).Diagnostics);
}
