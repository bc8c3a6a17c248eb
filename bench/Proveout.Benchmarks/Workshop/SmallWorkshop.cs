using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Benchmarks.Workshop;

/// <summary>The smallest sample, planned once, with what a meter would show at each check of a sound machine.</summary>
internal sealed class SmallWorkshop
{
    public const string Machine = "pennywort";

    private readonly MachineShelf _shelf;
    private readonly PlanDesk _desk = new();

    public SmallWorkshop()
    {
        var files = new MachineFiles(Flagship.PathOf("catalogue"));
        _shelf = new MachineShelf(files, [Flagship.PathOf("samples", Machine)]);
        var planned = _desk.Of(files.Read(Flagship.PathOf("samples", Machine)).Value!);
        Readings = RehearsedBuild.Readings(planned, [], seed: 20310314).Value!.ToDictionary(reading => reading.CheckId, reading => reading.Text);
    }

    public IReadOnlyDictionary<string, string> Readings { get; }

    public Desks DesksOver(IJournal journal)
    {
        var records = new WorkshopRecords(journal);
        var bench = new Bench(_shelf, _desk, journal, records);
        return new Desks(
            bench, new DesignDesk(_shelf, _desk), new ReceivingDesk(_shelf, journal), new HandoverDesk(_shelf, journal), new BookDesk(_shelf, _desk, bench, journal),
            new BuildsDesk(_shelf, _desk, journal, records))
        {
            Reports = new ReportCase(bench, journal, TimeProvider.System),
            Measuring = new MeasuringDesk(journal),
        };
    }

    public static async Task<string> StartAsync(IBench bench) =>
        (await bench.StartAsync(new StartBuild(Machine, "", "Ada Example", ""), CancellationToken.None)).Value!.Id;
}
