using System.Globalization;
using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Real processes on one file: side by side.</summary>
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

    private static string Line(Entry entry) => string.Create(CultureInfo.InvariantCulture, $"{entry.Sequence} {entry.Hash}");

    private static string Subject(Entry entry) => entry.Content switch
    {
        NoteWritten note => note.Text,
        PhotoAttached photo => photo.Subject,
        _ => "",
    };
}
