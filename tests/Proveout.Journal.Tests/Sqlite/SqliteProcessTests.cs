using System.Globalization;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Real processes on one file: side by side, and killed.</summary>
public sealed class SqliteProcessTests : IDisposable
{
    private const int Endless = int.MaxValue;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Two_processes_append_two_hundred_entries_each_and_nothing_is_lost_or_doubled()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
        var build = await journal.StartBuildAsync(Drafts.Build());
        using var ada = WriterProcess.Append(_folder.Journal, build.Id, "Ada", 200);
        using var bo = WriterProcess.Append(_folder.Journal, build.Id, "Bo", 200);

        var acknowledged = await Task.WhenAll(ada.ReadToEndAsync(), bo.ReadToEndAsync());

        var entries = await journal.ReadAsync(build.Id);
        Assert.All(acknowledged, lines => Assert.Equal(200, lines.Count));
        Assert.Equal(acknowledged.SelectMany(lines => lines).Order(), entries.Select(Line).Order());
        foreach (var person in new[] { "Ada", "Bo" })
            Assert.Equal(
                Enumerable.Range(1, 200).Select(number => $"{person} {number}"),
                entries.Where(entry => entry.Person == person).Select(Subject));
        Assert.Equal(400, Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id)).Entries);
    }

    [Fact]
    public async Task A_watcher_sees_the_entries_of_another_process_while_that_process_is_still_at_work()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
        var build = await journal.StartBuildAsync(Drafts.Build());
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await using var watcher = journal.WatchAsync(build.Id, 0, patience.Token).GetAsyncEnumerator(patience.Token);
        using var writer = WriterProcess.Append(_folder.Journal, build.Id, "Ada", Endless);

        for (var sequence = 1; sequence <= 25; sequence++)
        {
            Assert.True(await watcher.MoveNextAsync());
            Assert.Equal(sequence, watcher.Current.Sequence);
        }
        writer.Kill();
        await writer.ReadToEndAsync();
    }

    [Fact]
    public async Task What_was_acknowledged_is_there_and_whole_after_each_of_twenty_five_kills()
    {
        var random = new Random(20310314);
        Build build;
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System))
            build = await journal.StartBuildAsync(Drafts.Build());
        var acknowledged = new List<string>();

        for (var kill = 1; kill <= 25; kill++)
        {
            acknowledged.AddRange(await AppendUntilKilledAsync(build.Id, $"writer {kill}", random));

            await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
            var entries = await journal.ReadAsync(build.Id);
            Assert.Subset(entries.Select(Line).ToHashSet(), acknowledged.ToHashSet());
            // At most the one entry that was under way can be there without having been acknowledged, once for each kill.
            Assert.InRange(entries.Count - acknowledged.Count, 0, kill);
            Assert.Equal(entries.Count, Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id)).Entries);
        }
        Assert.True(acknowledged.Count >= 25, $"{acknowledged.Count} entries were acknowledged before the kills");
    }

    private async Task<IReadOnlyList<string>> AppendUntilKilledAsync(Guid build, string person, Random random)
    {
        using var writer = WriterProcess.Append(_folder.Journal, build, person, Endless);
        var acknowledged = new List<string>();
        for (var wanted = random.Next(1, 12); acknowledged.Count < wanted;)
            acknowledged.Add(await writer.ReadLineAsync() ?? throw new InvalidOperationException("The writer ended before it was killed."));
        // A moment somewhere within the next few appends, not right after an acknowledgement.
        Thread.SpinWait(random.Next(400_000));
        writer.Kill();
        acknowledged.AddRange(await writer.ReadToEndAsync());
        return acknowledged;
    }

    private static string Line(Entry entry) => string.Create(CultureInfo.InvariantCulture, $"{entry.Sequence} {entry.Hash}");

    private static string Subject(Entry entry) => entry.Content switch
    {
        NoteWritten note => note.Text,
        PhotoAttached photo => photo.Subject,
        _ => "",
    };
}
