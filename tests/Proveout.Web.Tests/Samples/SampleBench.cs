using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Samples;

/// <summary>The real bench over the samples of this repository and a journal in a temporary folder.</summary>
internal sealed class SampleBench : IAsyncDisposable
{
    /// <summary>The machine that builds are started from.</summary>
    public const string Machine = "pennywort";

    // Planning a machine takes a second or two; every test of a run shares the plans.
    private static readonly PlanDesk Desk = new();

    private static readonly MachineFiles Files = new(Path.Combine(Root(), "catalogue"));

    private static readonly string[] SampleMachines =
        [.. Directory.EnumerateDirectories(Path.Combine(Root(), "samples")).Where(folder => !folder.EndsWith("-as-wired", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private readonly string _folder;
    private readonly SqliteJournal _journal;

    private SampleBench(string folder, SqliteJournal journal, string[] machines)
    {
        var places = new EditPlaces(Path.Combine(folder, "machines"), Path.Combine(Root(), "samples"));
        var shelf = new MachineShelf(Files, machines, places.OwnFolder);
        var records = new WorkshopRecords(journal);
        (_folder, _journal, Bench) = (folder, journal, new Bench(shelf, Desk, journal, records));
        var editing = new EditDesk(Files, shelf, places, TimeProvider.System);
        Desks = new Desks(
            Bench, new DesignDesk(shelf, Desk), new ReceivingDesk(shelf, journal), new HandoverDesk(shelf, journal), new BookDesk(shelf, Desk, Bench, journal),
            new BuildsDesk(shelf, Desk, journal, records))
        {
            Reports = new ReportCase(Bench, journal, TimeProvider.System),
            Measuring = new MeasuringDesk(journal),
            Editing = editing,
            Starting = new StartDesk(Files, editing),
            Health = new HealthDesk(journal, Path.Combine(folder, "builds.db"), TimeProvider.System),
        };
    }

    public IBench Bench { get; }

    public Desks Desks { get; }

    /// <summary>Opens the bench.</summary>
    /// <param name="machines">Paths of its machines; those of the samples when left out.</param>
    public static async Task<SampleBench> OpenAsync(string[]? machines = null)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-bench-").FullName;
        return new SampleBench(folder, await SqliteJournal.OpenAsync(Path.Combine(folder, "builds.db"), TimeProvider.System), machines ?? SampleMachines);
    }

    public async ValueTask DisposeAsync()
    {
        await _journal.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        return folder.FullName;
    }
}
