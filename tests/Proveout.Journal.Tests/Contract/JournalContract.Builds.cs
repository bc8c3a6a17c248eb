namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_started_build_is_found_with_all_its_particulars_after_reopening()
    {
        var draft = Drafts.Build("Nº 7 \"blue\"");
        await using (var journal = await OpenAsync(new SteppingClock()))
            await journal.StartBuildAsync(draft);

        await using var again = await OpenAsync(TimeProvider.System);
        var found = await again.FindBuildAsync(draft.Id);

        Assert.Equal(
            new Build(draft.Id, "Nº 7 \"blue\"", "Small oven", Drafts.MachineFile, "Ada Example", SteppingClock.Start), found);
    }

    [Fact]
    public async Task Builds_are_listed_in_the_order_in_which_they_were_started()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        foreach (var serial in new[] { "003", "001", "002" })
            await journal.StartBuildAsync(Drafts.Build(serial));

        Assert.Equal(["003", "001", "002"], (await journal.ListBuildsAsync()).Select(build => build.Serial));
    }

    [Fact]
    public async Task Starting_the_same_draft_twice_starts_one_build()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var draft = Drafts.Build();

        var first = await journal.StartBuildAsync(draft);
        var second = await journal.StartBuildAsync(draft);

        Assert.Equal(first, second);
        Assert.Single(await journal.ListBuildsAsync());
    }

    [Fact]
    public async Task Another_build_under_the_same_identifier_is_refused()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var draft = Drafts.Build();
        await journal.StartBuildAsync(draft);

        var refusal = await Assert.ThrowsAsync<KeyReusedException>(() => journal.StartBuildAsync(draft with { Builder = "Bo Example" }));

        Assert.Equal(draft.Id, refusal.Key);
    }

    [Fact]
    public async Task A_serial_number_is_given_once_for_each_machine()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var first = await journal.StartBuildAsync(Drafts.Build("001"));
        await journal.StartBuildAsync(Drafts.Build("001") with { MachineName = "Large oven" });

        var refusal = await Assert.ThrowsAsync<SerialTakenException>(() => journal.StartBuildAsync(Drafts.Build("001")));

        Assert.Equal(first, refusal.Holder);
    }

    [Fact]
    public async Task A_build_that_was_never_started_is_null_when_sought_and_refused_when_used()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var unknown = Guid.NewGuid();

        Assert.Null(await journal.FindBuildAsync(unknown));
        await Assert.ThrowsAsync<BuildNotFoundException>(() => journal.AppendAsync(unknown, Drafts.Note("lost")));
        await Assert.ThrowsAsync<BuildNotFoundException>(() => journal.ReadAsync(unknown));
        await Assert.ThrowsAsync<BuildNotFoundException>(() => journal.VerifyAsync(unknown));
        await Assert.ThrowsAsync<BuildNotFoundException>(() => journal.WatchAsync(unknown).GetAsyncEnumerator().MoveNextAsync().AsTask());
    }

    [Theory]
    [InlineData(" ", "Small oven", "Ada Example", "serial number")]
    [InlineData("001", "", "Ada Example", "machine")]
    [InlineData("001", "Small oven", "\t", "builder")]
    [InlineData("0\01", "Small oven", "Ada Example", "serial number")]
    public async Task A_build_with_a_blank_or_unstorable_field_is_refused_and_the_field_is_named(
        string serial, string machine, string builder, string named)
    {
        await using var journal = await OpenAsync(new SteppingClock());

        var refusal = await Assert.ThrowsAsync<DraftRefusedException>(
            () => journal.StartBuildAsync(new BuildDraft(Guid.NewGuid(), serial, machine, Drafts.MachineFile, builder)));

        Assert.Contains(named, refusal.Message, StringComparison.Ordinal);
        Assert.Empty(await journal.ListBuildsAsync());
    }

    [Fact]
    public async Task A_build_whose_serial_number_would_be_altered_by_storing_it_is_refused()
    {
        await using var journal = await OpenAsync(new SteppingClock());

        await Assert.ThrowsAsync<DraftRefusedException>(() => journal.StartBuildAsync(Drafts.Build("half a pair: \ud800")));
    }
}
