using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A journal with the machines of its builds, and the bench over both.</summary>
internal sealed class Workplace : IAsyncDisposable
{
    private Workplace(MachineFiles files, MachineShelf shelf, EditPlaces places, IJournal journal, string? file)
    {
        (Shelf, Journal) = (shelf, journal);
        var records = new WorkshopRecords(journal);
        Bench = new Bench(shelf, Planning.Desk, journal, records);
        Reports = new ReportCase(Bench, journal, TimeProvider.System);
        Books = new BookDesk(shelf, Planning.Desk, Bench, journal);
        var editing = new EditDesk(files, shelf, places, TimeProvider.System);
        Desks = new Desks(Bench, new DesignDesk(shelf, Planning.Desk), new ReceivingDesk(shelf, journal), new HandoverDesk(shelf, journal), Books, new BuildsDesk(shelf, Planning.Desk, journal, records))
        {
            Reports = Reports,
            Measuring = new MeasuringDesk(journal),
            Editing = editing,
            Starting = new StartDesk(files, editing),
            FormKeys = FormKeys.Beside(journal),
            Health = new HealthDesk(journal, file, TimeProvider.System),
        };
    }

    public MachineShelf Shelf { get; }

    public IJournal Journal { get; }

    public IBench Bench { get; }

    public Desks Desks { get; }

    public ReportCase Reports { get; }

    public BookDesk Books { get; }

    /// <summary>Opens the journal, or makes it.</summary>
    /// <exception cref="JournalException">It cannot be opened.</exception>
    public static async Task<Workplace> OpenAsync(MachineFiles files, IEnumerable<string> machines, string journal, CancellationToken cancellation)
    {
        var places = new EditPlaces(Places.OwnMachinesBeside(journal), Places.Samples);
        var opened = await JournalPlace.OpenAsync(journal, TimeProvider.System, cancellation);
        return new(files, new MachineShelf(files, machines, places.OwnFolder), places, opened, JournalPlace.IsDatabase(journal) ? null : journal);
    }

    /// <summary>Opens a journal that is there already.</summary>
    /// <exception cref="JournalException">It cannot be opened.</exception>
    public static async Task<Outcome<Workplace>> OpenExistingAsync(MachineFiles files, IEnumerable<string> machines, string journal, CancellationToken cancellation) =>
        await JournalPlace.HasJournalAsync(journal, cancellation)
            ? Outcome.Of(await OpenAsync(files, machines, journal, cancellation))
            : Outcome.Refused<Workplace>(
            [
                new Diagnostic(
                    "no-journal",
                    new SourcePlace(JournalPlace.NameOf(journal), 0, 0),
                    "There is no journal here.",
                    "Give the path of one with --journal, or start a build: `proveout bench MACHINE`."),
            ]);

    /// <summary>Plans the machine of a build while a person waits, so that the bench answers at once; refused when it is not at hand.</summary>
    public async Task<Outcome<PlannedMachine>> PlanAsync(Terminal terminal, Build build, CancellationToken cancellation) =>
        Shelf.OfBuild(build.MachineFingerprint, build.MachineName) is { } machine
            ? Outcome.Of(await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation))
            : Outcome.Refused<PlannedMachine>(
            [
                new Diagnostic(
                    "machine-not-at-hand",
                    new SourcePlace(build.MachineName, 0, 0),
                    $"Build {build.Serial} was started from the machine {build.MachineName}, which is not among the samples.",
                    "Give its file or folder with --machine."),
            ]);

    public ValueTask DisposeAsync() => Journal.DisposeAsync();
}
