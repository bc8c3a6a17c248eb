using Proveout.Journal;

namespace Proveout.Workshop.Tests;

/// <summary>A bench on a journal of its own in a temporary folder.</summary>
internal sealed class BenchFixture : IAsyncDisposable
{
    private readonly DirectoryInfo _folder;
    private readonly SqliteJournal _journal;

    private BenchFixture(DirectoryInfo folder, SqliteJournal journal)
    {
        (_folder, _journal) = (folder, journal);
        Shelf = new MachineShelf(Samples.Files, [Samples.PathOf("pennywort")]);
        var records = new WorkshopRecords(journal);
        Bench = new Bench(Shelf, Samples.Desk, journal, records);
        Builds = new BuildsDesk(Shelf, Samples.Desk, journal, records);
    }

    public MachineShelf Shelf { get; }

    public Bench Bench { get; }

    public BuildsDesk Builds { get; }

    public IJournal Journal => _journal;

    public static async Task<BenchFixture> OpenAsync(DirectoryInfo? folder = null)
    {
        folder ??= Directory.CreateTempSubdirectory("proveout-test-");
        return new BenchFixture(folder, await SqliteJournal.OpenAsync(Path.Combine(folder.FullName, "journal.db"), TimeProvider.System));
    }

    public Task<BenchFixture> OpenAgainAsync() => OpenAsync(_folder);

    public async Task<BuildSummary> StartAsync(string serial = "1") =>
        (await Bench.StartAsync(new StartBuild("pennywort", serial, "Ada", ""), default)).Value!;

    public async ValueTask DisposeAsync()
    {
        await _journal.DisposeAsync();
        if (_folder.Exists)
            _folder.Delete(recursive: true);
    }
}
