namespace Proveout.Workshop.Tests;

public sealed class MeasuringDeskTests
{
    private static MeasurementRequest Request(byte[]? file = null, string person = "Ada") => new(
        "frame",
        "Diagonals of the base",
        "The base is out of square by 0.4 mm.",
        [new KeptFigure("Skew", 0.4, 0.1, "mm")],
        new Dictionary<string, string> { ["first"] = "424,6" },
        file is null ? null : new MeasuredFile("frame.csv", "text/csv", file),
        person,
        Guid.NewGuid());

    [Fact]
    public async Task A_kept_measurement_is_read_back_with_its_file()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var desk = new MeasuringDesk(fixture.Journal);

        var kept = (await desk.KeepAsync(build.Id, Request([1, 2, 3]), default)).Value!;

        Assert.Equal("424,6", kept.Typed["first"]);
        Assert.Equal(new KeptFigure("Skew", 0.4, 0.1, "mm"), Assert.Single(kept.Results));
        Assert.Equal([1, 2, 3], (await desk.FileAsync(build.Id, kept.FileSha256, default))!.Bytes.ToArray());
        Assert.Equal(kept.Sequence, Assert.Single((await desk.OfBuildAsync(build.Id, default))!).Sequence);
    }

    [Fact]
    public async Task The_record_says_a_measurement_in_plain_words()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        await new MeasuringDesk(fixture.Journal).KeepAsync(build.Id, Request([1, 2, 3]), default);

        var note = (await fixture.Bench.StateAsync(build.Id, default))!.Deviations[^1];

        Assert.StartsWith("Measured: Diagonals of the base. The base is out of square by 0.4 mm. Skew 0.40 ± 0.10 mm. Data file frame.csv, SHA-256 039058c6f2c0", note.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_measurement_of_no_build_or_by_nobody_is_refused()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var desk = new MeasuringDesk(fixture.Journal);

        Assert.Null((await desk.KeepAsync(Guid.NewGuid().ToString(), Request(), default)).Value);
        Assert.Null((await desk.KeepAsync(build.Id, Request(person: " "), default)).Value);
        Assert.Empty((await desk.OfBuildAsync(build.Id, default))!);
        Assert.Null(await desk.OfBuildAsync("no build", default));
    }

    [Fact]
    public async Task Further_data_files_are_kept_by_entries_of_their_own_and_once_only()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var desk = new MeasuringDesk(fixture.Journal);
        var request = Request([1, 2, 3]) with { Further = [new MeasuredFile("hot.csv", "text/csv", new byte[] { 4, 5 })] };

        await desk.KeepAsync(build.Id, request, default);
        await desk.KeepAsync(build.Id, request, default);
        var kept = (await desk.OfBuildAsync(build.Id, default))!;

        Assert.Equal(["frame.csv", "hot.csv"], kept.Select(each => each.FileName));
        Assert.Equal($"Belongs to entry {kept[0].Sequence}.", kept[1].Summary);
        Assert.Equal([4, 5], (await desk.FileAsync(build.Id, kept[1].FileSha256, default))!.Bytes.ToArray());
    }

    [Fact]
    public void A_tension_is_kept_with_its_notes_forces_and_what_to_do()
    {
        var view = Sounding.Of(new SoundingRequest([], new Dictionary<string, string> { ["frequency"] = "112", ["other-frequency"] = "96", ["span"] = "150", ["mass"] = "8.1" })).Value!;

        var request = Measurements.Of(view, new KeepRequest("", new Dictionary<string, string>(), [Measurements.FileOf(new SoundFile("/home/ida/left.wav", [1]))], "Ida", Guid.NewGuid()));

        Assert.Equal(("tension", "Belt tension", "left.wav", "audio/wav"), (request.Analysis, request.Title, request.File!.Name, request.File.ContentType));
        Assert.Equal(["left belt: note", "left belt: force", "right belt: note", "right belt: force", "left over right, of their mean"], request.Results.Select(result => result.Name));
        Assert.Contains("The left belt is tighter.", request.Summary, StringComparison.Ordinal);
    }
}
