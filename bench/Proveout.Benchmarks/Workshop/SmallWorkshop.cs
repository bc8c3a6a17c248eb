using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Benchmarks.Workshop;

/// <summary>A workshop with one sample, planned once, with what a meter would show at each check of a sound machine.</summary>
internal sealed class SmallWorkshop
{
    private readonly string _machine;
    private readonly MachineShelf _shelf;
    private readonly PlanDesk _desk = new();

    /// <param name="machine">Name of the sample; without one it is the smallest.</param>
    public SmallWorkshop(string machine = "pennywort")
    {
        _machine = machine;
        var files = new MachineFiles(Flagship.PathOf("catalogue"));
        _shelf = new MachineShelf(files, [Flagship.PathOf("samples", machine)]);
        var planned = _desk.Of(files.Read(Flagship.PathOf("samples", machine)).Value!);
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

    public async Task<string> StartAsync(IBench bench) =>
        (await bench.StartAsync(new StartBuild(_machine, "", "Ada Example", ""), CancellationToken.None)).Value!.Id;

    /// <summary>Builders at a server, each with a build of their own.</summary>
    public async Task<IReadOnlyList<BuilderAtBench>> BuildersAsync(Uri server, IBench bench, int count)
    {
        var builders = new List<BuilderAtBench>();
        for (var number = 0; number < count; number++)
            builders.Add(new BuilderAtBench(server, await StartAsync(bench), Readings));
        return builders;
    }
}
