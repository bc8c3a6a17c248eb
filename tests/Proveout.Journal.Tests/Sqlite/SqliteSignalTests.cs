namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteSignalTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_watcher_is_woken_by_appends_of_its_own_process_without_any_timer()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new ClockWithoutTimers());
        var build = await journal.StartBuildAsync(Drafts.Build());
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        await using var watcher = journal.WatchAsync(build.Id, 0, patience.Token).GetAsyncEnumerator(patience.Token);

        for (var sequence = 1; sequence <= 50; sequence++)
        {
            var next = watcher.MoveNextAsync();
            await journal.AppendAsync(build.Id, Drafts.Note($"{sequence}"));
            Assert.True(await next);
            Assert.Equal(sequence, watcher.Current.Sequence);
        }
    }

    /// <summary>A clock whose timers never go off.</summary>
    private sealed class ClockWithoutTimers : TimeProvider
    {
        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
            base.CreateTimer(callback, state, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }
}
