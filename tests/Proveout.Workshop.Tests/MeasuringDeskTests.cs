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
}
