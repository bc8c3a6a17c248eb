using Proveout.Journal.Trials;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Journal.Tests.Postgres;

/// <summary>Real processes on one database, and a server that stops in the middle.</summary>
public sealed class PostgresProcessTests(SharedServer shared)
{
    [Fact]
    public async Task Two_hundred_benches_in_four_processes_lose_and_double_nothing_though_each_sends_everything_twice()
    {
        var address = shared.Server.NewDatabase();
        await using var journal = await PostgresJournal.OpenAsync(address, TimeProvider.System);
        for (var number = 1; number <= 7; number++)
            await journal.StartBuildAsync(Drafts.Build($"{number}"));
        var processes = new[] { "Ada", "Bo", "Cy", "Di" }.Select(person => WriterProcess.AtBenches(address, person, benches: 50, entries: 5)).ToList();

        var said = (await Task.WhenAll(processes.Select(process => process.ReadToEndAsync()))).SelectMany(lines => lines).ToList();

        processes.ForEach(process => process.Dispose());
        var entries = new List<Entry>();
        foreach (var build in await journal.ListBuildsAsync())
        {
            var ofBuild = await journal.ReadAsync(build.Id);
            Assert.Equal(new ChainWhole(ofBuild.Count, ofBuild[^1].Hash), await journal.VerifyAsync(build.Id));
            entries.AddRange(ofBuild);
        }
        Assert.Equal(1000, entries.Count);
        Assert.Equal(1000, entries.DistinctBy(entry => entry.Key).Count());
        Assert.Equal(entries.SelectMany(entry => new[] { Line(entry), Line(entry) }).Order(), said.Order());
        Assert.Empty(await journal.InspectAsync());
    }

    [Fact]
    public async Task A_server_stopped_at_once_loses_nothing_acknowledged_and_what_is_sent_again_goes_in_once()
    {
        var result = await ServerCrashTrial.RunAsync(crashes: 3, benches: 8, seed: 20310314);

        Assert.SkipUnless(result is not null, "PostgreSQL is not installed; ./test installs it where it may.");
        Assert.Equal((0, 0, 0), (result!.Lost, result.Surplus, result.NotWhole));
        Assert.True(result is { Acknowledged: > 50, Refused: > 3 }, $"The trial told too little: {result}");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_connection_lost_at_the_commit_gives_a_sentence_and_the_same_draft_goes_in_once(bool commitArrives)
    {
        using var wire = new CuttingWire(shared.Server.Folder) { LastWordsArrive = commitArrives };
        var name = PostgresServer.NameIn(shared.Server.NewDatabase());
        await using var journal = await PostgresJournal.OpenAsync(shared.Server.AddressOf(name, wire.Folder), new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        var draft = Drafts.Note("torn");
        wire.CutAt("COMMIT\0");

        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.AppendAsync(build.Id, draft));
        var thereBefore = (await journal.ReadAsync(build.Id)).Count;
        var entry = await journal.AppendAsync(build.Id, draft);

        Assert.Equal(
            $"The connection to the database postgresql:///{name} was lost before it said that the entry is on its disk, so it may be recorded or not. "
            + "Send the same again: it goes in once.",
            refusal.Message);
        Assert.Equal((1, commitArrives ? 1 : 0), (wire.Cuts, thereBefore));
        Assert.Equal([entry], await journal.ReadAsync(build.Id));
    }

    [Theory]
    [InlineData("BEGIN")]
    [InlineData("INSERT INTO proveout.entries")]
    public async Task A_connection_lost_before_the_commit_is_made_anew_without_a_word(string moment)
    {
        using var wire = new CuttingWire(shared.Server.Folder);
        var name = PostgresServer.NameIn(shared.Server.NewDatabase());
        await using var journal = await PostgresJournal.OpenAsync(shared.Server.AddressOf(name, wire.Folder), new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        wire.CutAt(moment);

        var entry = await journal.AppendAsync(build.Id, Drafts.Note("torn"));

        Assert.Equal(1, wire.Cuts);
        Assert.Equal([entry], await journal.ReadAsync(build.Id));
    }

    [Fact]
    public async Task A_watcher_sees_the_entries_of_another_process_while_that_process_is_still_at_work()
    {
        var address = shared.Server.NewDatabase();
        await using var journal = await PostgresJournal.OpenAsync(address, TimeProvider.System);
        var build = await journal.StartBuildAsync(Drafts.Build());
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await using var watcher = journal.WatchAsync(build.Id, 0, patience.Token).GetAsyncEnumerator(patience.Token);
        using var writer = WriterProcess.Append(address, build.Id, "Ada", int.MaxValue);

        for (var sequence = 1; sequence <= 25; sequence++)
        {
            Assert.True(await watcher.MoveNextAsync());
            Assert.Equal(sequence, watcher.Current.Sequence);
        }
        writer.Kill();
        await writer.ReadToEndAsync();
    }

    private static string Line(Entry entry) => FormattableString.Invariant($"{entry.Sequence} {entry.Hash}");
}
