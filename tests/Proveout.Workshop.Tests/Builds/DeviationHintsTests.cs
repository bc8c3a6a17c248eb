using Proveout.Workshop.Tests.Books;

namespace Proveout.Workshop.Tests.Builds;

public sealed class DeviationHintsTests : IAsyncLifetime
{
    private static readonly Engine.Faults.Check Step = Samples.Pennywort.Dictionary.Checks[Samples.Pennywort.Plan.Checks[0]];

    private BenchFixture _fixture = null!;

    public async ValueTask InitializeAsync() => _fixture = await BenchFixture.OpenAsync();

    public ValueTask DisposeAsync() => _fixture.DisposeAsync();

    [Fact]
    public async Task A_deviation_at_a_check_is_a_hint_there_to_the_next_build_and_not_to_its_own()
    {
        var (first, second) = (await _fixture.StartAsync("1"), await _fixture.StartAsync("2"));
        await NoteAsync(first, Step.Id, "Blue in place of black.");

        var hint = Assert.Single(await HintsAsync(second));

        Assert.Equal(("1", "Blue in place of black.", "Ada", first.Id), (hint.Serial, hint.Note.Text, hint.Note.Person, hint.BuildId));
        Assert.Equal("1 build found it so.", hint.Standing);
        Assert.Empty(await HintsAsync(first));
    }

    [Fact]
    public async Task A_deviation_on_a_part_or_wire_is_a_hint_at_every_check_that_touches_it()
    {
        var (first, second) = (await _fixture.StartAsync("1"), await _fixture.StartAsync("2"));
        var point = Step.Points[0];
        var wire = Samples.Pennywort.Machine.Design.Conductors.First(conductor => Step.Points.Any(touched =>
            (conductor.From.Part, conductor.From.Terminal) == (touched.Subject, touched.Place) || (conductor.To.Part, conductor.To.Terminal) == (touched.Subject, touched.Place)));
        await NoteAsync(first, point.Subject.ToLowerInvariant(), "Another make.");
        await NoteAsync(first, wire.Id, "Thicker.");
        await NoteAsync(first, "something else", "No hint here.");

        Assert.Equal(["Another make.", "Thicker."], (await HintsAsync(second)).Select(hint => hint.Note.Text).Order());
    }

    [Fact]
    public async Task Answers_of_other_builds_are_counted_and_the_last_of_each_counts()
    {
        var builds = new[] { await _fixture.StartAsync("1"), await _fixture.StartAsync("2"), await _fixture.StartAsync("3") };
        await NoteAsync(builds[0], Step.Id, "Blue in place of black.");
        var noted = Assert.Single(await HintsAsync(builds[1])).Note;
        await AnswerAsync(builds[1], builds[0], noted, holds: false);
        await AnswerAsync(builds[1], builds[0], noted, holds: true);
        await AnswerAsync(builds[2], builds[0], noted, holds: false);

        var hint = Assert.Single(await HintsAsync(builds[1]));

        Assert.Equal((1, 1, true), (hint.SoToo, hint.NotSo, hint.Own));
        Assert.Equal("2 builds found it so, 1 build did not.", hint.Standing);
    }

    [Fact]
    public async Task The_record_says_what_was_answered()
    {
        var (first, second) = (await _fixture.StartAsync("1"), await _fixture.StartAsync("2"));
        await NoteAsync(first, Step.Id, "Blue in place of black.");
        await AnswerAsync(second, first, Assert.Single(await HintsAsync(second)).Note, holds: true);
        var note = Assert.Single((await _fixture.Bench.StateAsync(second.Id, default))!.Deviations);
        Assert.Equal($"What build {first.Id} noted as its entry 3 is so here too. Seen.", note.Text);
    }

    [Fact]
    public async Task The_hint_comes_with_the_photographs_of_the_same_place()
    {
        var (first, second) = (await _fixture.StartAsync("1"), await _fixture.StartAsync("2"));
        await NoteAsync(first, Step.Id, "Blue in place of black.");
        var attached = await _fixture.Bench.AttachPhotoAsync(first.Id, new(Step.Id, "The wire", "x.jpg", "image/jpeg", Pictures.Jpeg(8, 8), "Ada", Guid.NewGuid()), default);
        Assert.Empty(attached.Diagnostics);
        Assert.Equal("The wire", Assert.Single(Assert.Single(await HintsAsync(second)).Photos).Text);
    }

    [Fact]
    public async Task An_answer_to_what_nobody_noted_is_refused()
    {
        var build = await _fixture.StartAsync("1");
        var refused = await _fixture.Builds.AnswerAsync(build.Id, new(build.Id, 1, true, "", "Ada", Guid.NewGuid()), default);
        Assert.Equal("no-such-deviation", Assert.Single(refused.Diagnostics).Rule);
    }

    private Task<IReadOnlyList<DeviationHint>> HintsAsync(BuildSummary build) => _fixture.Builds.HintsAsync(build.Id, Step.Id, default);

    private async Task NoteAsync(BuildSummary build, string subject, string note) =>
        Assert.Empty((await _fixture.Bench.NoteDeviationAsync(build.Id, new(subject, note, "Ada", Guid.NewGuid()), default)).Diagnostics);

    private async Task AnswerAsync(BuildSummary build, BuildSummary noted, JournalNote note, bool holds) => Assert.Empty(
        (await _fixture.Builds.AnswerAsync(build.Id, new(noted.Id, (int)note.Sequence, holds, "Seen.", "Bo", Guid.NewGuid()), default)).Diagnostics);
}
