namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_watcher_gets_what_is_there_and_then_what_comes_in_order_and_once()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        for (var number = 1; number <= 3; number++)
            await journal.AppendAsync(build.Id, Drafts.Note($"{number}"));

        var watched = TakeAsync(journal, build.Id, after: 1, count: 7);
        for (var number = 4; number <= 8; number++)
            await journal.AppendAsync(build.Id, Drafts.Note($"{number}"));

        Assert.Equal(Enumerable.Range(2, 7), (await watched).Select(entry => entry.Sequence));
    }

    [Fact]
    public async Task A_watcher_sees_what_was_written_through_another_opening_of_the_journal()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await using var other = await OpenAsync(new SteppingClock());
        var watched = TakeAsync(journal, build.Id, after: 0, count: 1);

        var written = await other.AppendAsync(build.Id, Drafts.Note("from elsewhere"));

        Assert.Equal([written], await watched);
    }

    [Fact]
    public async Task A_watcher_sees_nothing_of_other_builds()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var other = await journal.StartBuildAsync(Drafts.Build("002"));
        var watched = TakeAsync(journal, build.Id, after: 0, count: 1);

        await journal.AppendAsync(other.Id, Drafts.Note("of the other"));
        await journal.AppendAsync(build.Id, Drafts.Note("of this one"));

        Assert.Equal(new NoteWritten("of this one"), Assert.Single(await watched).Content);
    }

    [Fact]
    public async Task Watching_ends_when_it_is_cancelled()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        using var cancellation = new CancellationTokenSource();
        await using var watcher = journal.WatchAsync(build.Id, 0, cancellation.Token).GetAsyncEnumerator(CancellationToken.None);
        var waiting = watcher.MoveNextAsync().AsTask();

        await cancellation.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting.WaitAsync(Patience));
    }

    private static async Task<IReadOnlyList<Entry>> TakeAsync(IJournal journal, Guid build, int after, int count)
    {
        using var patience = new CancellationTokenSource(Patience);
        return await journal.WatchAsync(build, after, patience.Token).Take(count).ToListAsync(patience.Token);
    }
}
