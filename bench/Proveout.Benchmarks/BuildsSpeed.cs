using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Journal;
using Proveout.Web;
using Proveout.Workshop;

namespace Proveout.Benchmarks;

/// <summary>
/// Prints how long pages take with many builds, beside a bare page of the same host in the same run. The journal lies in memory where there is
/// such a folder, because making it is not what is measured.
/// </summary>
internal static class BuildsSpeed
{
    private const string Machine = "pennywort";
    private const int Turns = 200;
    private const int ReadingsOfABuild = 30;

    public static async Task PrintAsync(TextWriter output, string[] more)
    {
        var count = more is [var text, ..] ? int.Parse(text, CultureInfo.InvariantCulture) : 10_000;
        var folder = Directory.CreateDirectory(Path.Combine(Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath(), $"proveout-builds-{Environment.ProcessId}"));
        try
        {
            await using var journal = await SqliteJournal.OpenAsync(Path.Combine(folder.FullName, "journal.db"), TimeProvider.System);
            var root = Flagship.Root();
            var shelf = new MachineShelf(new MachineFiles(Path.Combine(root, "catalogue")), [Path.Combine(root, "samples", Machine)]);
            var desk = new PlanDesk();
            var planned = desk.Of(shelf.Machines[0]);
            var watch = Stopwatch.StartNew();
            var entries = await FillAsync(journal, planned, count);
            output.WriteLine(Line($"{count} builds with {entries} entries made in {watch.Elapsed.TotalSeconds:0} s"));
            await MeasureAsync(output, journal, shelf, desk, planned);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task MeasureAsync(TextWriter output, SqliteJournal journal, MachineShelf shelf, PlanDesk desk, PlannedMachine planned)
    {
        var records = new WorkshopRecords(journal);
        var bench = new Bench(shelf, desk, journal, records);
        var desks = new Desks(bench, new DesignDesk(shelf, desk), new ReceivingDesk(shelf, journal), new HandoverDesk(shelf, journal), new BookDesk(shelf, desk, bench, journal), new BuildsDesk(shelf, desk, journal, records));
        await using var app = BenchHost.Build(new BenchHostOptions(), desks);
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        var newest = (await journal.ListBuildsAsync())[^1];
        var check = planned.Dictionary.Checks[planned.Plan.Checks[0]].Id;
        var watch = Stopwatch.StartNew();
        await client.GetStringAsync($"/machines/{Machine}/builds");
        output.WriteLine(Line($"first look at all builds: {watch.Elapsed.TotalSeconds:0.0} s, {GC.GetTotalMemory(forceFullCollection: true) / 1e6:0} MB held"));
        var bare = await NinetyFifthAsync(client, "/nothing/here", null);
        output.WriteLine("| page | processor ms | times a bare page | 95 of 100 below, ms elapsed | bytes |");
        output.WriteLine("| --- | --- | --- | --- | --- |");
        output.WriteLine(Line($"| bare (nothing at this address) | {bare.Processor:0.00} | 1 | {bare.Elapsed:0.0} | |"));
        Func<int, Task> enter = turn => bench.EnterReadingAsync(
            newest.Id.ToString(), new ReadingRequest(check, (1 + (0.01 * turn)).ToString("0.00", CultureInfo.InvariantCulture), "Ada", Guid.NewGuid()), default);
        foreach (var (name, address, between) in new (string, string, Func<int, Task>?)[]
        {
            ("front", "/", null),
            ("front, found by name", "/?find=0042", null),
            ("all builds", $"/machines/{Machine}/builds", null),
            ("all builds, a reading entered before each", $"/machines/{Machine}/builds", enter),
            ("all builds, plot of a check", $"/machines/{Machine}/builds?check={check}", null),
            ("all builds, found by name, page 2", $"/machines/{Machine}/builds?find=9&page=2", null),
            ("check of a build", $"/builds/{newest.Id}/checks/{check}", null),
            ("check of a build, a reading entered before each", $"/builds/{newest.Id}/checks/{check}", enter),
        })
        {
            var time = await NinetyFifthAsync(client, address, between);
            output.WriteLine(Line($"| {name} | {time.Processor:0.00} | {time.Processor / bare.Processor:0.0} | {time.Elapsed:0.0} | {(await client.GetByteArrayAsync(address)).Length} |"));
        }

        await app.StopAsync();
    }

    private static async Task<int> FillAsync(SqliteJournal journal, PlannedMachine planned, int count)
    {
        var random = new Random(20261128);
        string[] plan = [.. planned.Plan.Checks.Select(check => planned.Dictionary.Checks[check].Id)];
        var fingerprint = Fingerprint.OfText(string.Join('\n', plan));
        var entries = 0;
        for (var number = 0; number < count; number++)
        {
            var build = await journal.StartBuildAsync(new BuildDraft(
                Guid.CreateVersion7(), Line($"{number:00000}"), planned.Machine.Design.Name, planned.Machine.Fingerprint, Line($"Builder {number % 700}")));
            List<EntryContent> contents = [new PlanFixed("wiring, dead", fingerprint, plan), new InstrumentDeclared("meter", "meter", LeadsZeroed: true)];
            contents.AddRange(planned.Plan.Checks.Take(ReadingsOfABuild).Select(check => new ReadingEntered(Read(planned.Dictionary.Checks[check], random))));
            if (number % 20 == 0)
                contents.Add(new MistakeFound(planned.Dictionary.Faults[number % 90].Kind, planned.Dictionary.Faults[number % 90].Id, ""));
            if (number % 50 == 0)
                contents.Add(new Deviation(plan[number / 50 % plan.Length], "Another colour than the drawing says."));
            foreach (var content in contents)
                await journal.AppendAsync(build.Id, new EntryDraft(Guid.CreateVersion7(), build.Builder, "", content));
            entries += contents.Count;
        }

        return entries;
    }

    private static Proveout.Journal.Reading Read(Check check, Random random)
    {
        var (low, high) = (check.Expectation.Low, check.Expectation.High);
        var isOver = double.IsInfinity(high);
        // One in a thousand is far off.
        var value = isOver ? 0 : low + ((high - low) * (0.5 + (0.05 * (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5)))) * (random.Next(1000) == 0 ? 1.5 : 1);
        return new(check.Id, check.SetUp, isOver ? "OL" : Line($"{value:0.0}"), isOver ? null : value, isOver, isOver ? "" : check.Unit, "pass");
    }

    private static async Task<(double Processor, double Elapsed)> NinetyFifthAsync(HttpClient client, string address, Func<int, Task>? before)
    {
        using var process = Process.GetCurrentProcess();
        var (times, processor) = (new List<double>(), 0.0);
        for (var turn = -20; turn < Turns; turn++)
        {
            if (before is not null)
                await before(turn + 20);
            process.Refresh();
            var (start, spent) = (Stopwatch.GetTimestamp(), process.TotalProcessorTime);
            using (var answer = await client.GetAsync(address))
                await answer.Content.ReadAsByteArrayAsync();
            // The first ones are compiled.
            if (turn < 0)
                continue;
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            process.Refresh();
            processor += (process.TotalProcessorTime - spent).TotalMilliseconds;
        }

        return (processor / Turns, times.Order().ElementAt((int)(times.Count * 0.95)));
    }

    private static string Line(FormattableString text) => FormattableString.Invariant(text);
}
