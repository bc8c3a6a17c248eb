using System.Diagnostics;
using System.Globalization;
using Proveout.Journal;
using Proveout.Web;

namespace Proveout.Benchmarks.Workshop;

/// <summary>A server through many builds, one after the other at each of a few benches: does its memory come to rest?</summary>
internal static class LongUse
{
    private const int Benches = 8, Looks = 10;

    public static async Task PrintAsync(TextWriter output, int readings)
    {
        var workshop = new SmallWorkshop();
        var folder = Directory.CreateTempSubdirectory("proveout-long-");
        var builds = 0;
        await using (var journal = await JournalPlace.OpenAsync(Path.Combine(folder.FullName, "journal.db"), TimeProvider.System))
        {
            var desks = workshop.DesksOver(journal);
            await using var app = BenchHost.Build(new BenchHostOptions(), desks);
            await app.StartAsync();
            var builders = await workshop.BuildersAsync(new Uri(app.Urls.First()), desks.Bench, Benches);
            builds += Benches;
            output.WriteLine("| requests | builds | live memory after a full collection, MB | working set, MB |");
            output.WriteLine("| --- | --- | --- | --- |");
            var requests = 0;
            for (var look = 1; look <= Looks; look++)
            {
                await Task.WhenAll(builders.Select(async builder =>
                {
                    for (var number = 0; number < readings / Looks / Benches; number++)
                        if (!await builder.EnterAsync())
                        {
                            builder.TakeUp(await workshop.StartAsync(desks.Bench));
                            Interlocked.Increment(ref builds);
                        }
                }));
                requests += builders.Sum(builder => builder.Requests.Count);
                foreach (var builder in builders)
                    builder.Forget();
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {requests} | {builds} | {Live():F1} | {Process.GetCurrentProcess().WorkingSet64 / 1e6:F0} |"));
            }
            foreach (var builder in builders)
                builder.Dispose();
        }
        folder.Delete(recursive: true);
    }

    private static double Live()
    {
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        GC.WaitForPendingFinalizers();
        return GC.GetTotalMemory(forceFullCollection: true) / 1e6;
    }
}
