using System.Diagnostics;
using System.Globalization;
using Proveout.Journal;
using Proveout.Web;

namespace Proveout.Benchmarks.Workshop;

/// <summary>Fifty people at their benches, each with a reading every few seconds: how long the server takes for each request, by its own clock.</summary>
/// <remarks>The times are those of the framework's own instrument <c>http.server.request.duration</c>, without network and browser, which run on the same processor here.</remarks>
internal static class PacedBenches
{
    private const int Benches = 50, Readings = 12;

    // A practised hand needs longer for a reading; four requests belong to each.
    private static readonly TimeSpan Pace = TimeSpan.FromSeconds(5);

    public static async Task PrintAsync(TextWriter output, IReadOnlyList<string> machines)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Benches} benches, a reading of four requests every {Pace.TotalSeconds} s; {Readings} readings each after 2 to warm up."));
        output.WriteLine("| machine | requests | requests/s | p50 ms | p95 ms | p99 ms | most ms | processor busy |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var machine in machines is [] ? ["pennywort", "alderbrook"] : machines)
            await PrintAsync(output, machine);
    }

    private static async Task PrintAsync(TextWriter output, string machine)
    {
        var workshop = new SmallWorkshop(machine);
        var folder = Directory.CreateTempSubdirectory("proveout-paced-");
        await using (var journal = await JournalPlace.OpenAsync(Path.Combine(folder.FullName, "journal.db"), TimeProvider.System))
        {
            var desks = workshop.DesksOver(journal);
            await using var app = BenchHost.Build(new BenchHostOptions(), desks);
            await app.StartAsync();
            var builders = await workshop.BuildersAsync(new Uri(app.Urls.First()), desks.Bench, Benches);
            await Task.WhenAll(builders.Select((builder, number) => EnterAsync(builder, number, readings: 2)));
            using var times = new ServerTimes();
            using var process = Process.GetCurrentProcess();
            var (before, watch) = (process.TotalProcessorTime, Stopwatch.StartNew());
            await Task.WhenAll(builders.Select((builder, number) => EnterAsync(builder, number, Readings)));
            process.Refresh();
            var busy = (process.TotalProcessorTime - before) / watch.Elapsed / Environment.ProcessorCount;
            output.WriteLine(times.Row(machine, watch.Elapsed, busy));
            foreach (var builder in builders)
                builder.Dispose();
        }
        folder.Delete(recursive: true);
    }

    // Benches start spread over one pace, as people do.
    private static async Task EnterAsync(BuilderAtBench builder, int number, int readings)
    {
        await Task.Delay(Pace * number / Benches);
        for (var done = 0; done < readings; done++)
        {
            var pause = Task.Delay(Pace);
            if (!await builder.EnterAsync())
                throw new InvalidOperationException("The build has no check left; measure with fewer readings.");
            await pause;
        }
    }
}
