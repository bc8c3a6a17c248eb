using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Proveout.Journal;
using Proveout.Journal.Trials.Servers;
using Proveout.Web;

namespace Proveout.Benchmarks.Workshop;

/// <summary>Many benches that enter readings at once, on each store, beside a bare endpoint of the same framework in the same run.</summary>
internal static class WorkshopLoad
{
    private const int WarmingUp = 2;

    public static async Task PrintAsync(TextWriter output, int benches, int readings)
    {
        var workshop = new SmallWorkshop();
        var folder = Directory.CreateTempSubdirectory("proveout-load-");
        using var server = PostgresServer.Begin();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{benches} benches, {readings} readings each, four requests a reading; browsers and server share this process."));
        output.WriteLine("| store | requests/s | p50 ms | p99 ms | p99 of entering, ms | processor ms a request | throughput against bare | processor against bare |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
        var bare = await MeasureAsync(BareServer.Build(), [.. Enumerable.Range(1, benches).Select(number => $"{number}")], workshop.Readings, readings);
        output.WriteLine(bare.Row("bare endpoint", bare));
        string?[] places = [Path.Combine(folder.FullName, "journal.db"), server?.NewDatabase()];
        foreach (var place in places.OfType<string>())
        {
            await using var journal = await JournalPlace.OpenAsync(place, TimeProvider.System);
            var desks = workshop.DesksOver(journal);
            var builds = new List<string>();
            for (var number = 0; number < benches; number++)
                builds.Add(await workshop.StartAsync(desks.Bench));
            var load = await MeasureAsync(BenchHost.Build(new BenchHostOptions(), desks), builds, workshop.Readings, readings);
            output.WriteLine(load.Row(JournalPlace.IsDatabase(place) ? "PostgreSQL" : "SQLite", bare));
        }
        folder.Delete(recursive: true);
    }

    private static async Task<LoadFigures> MeasureAsync(WebApplication app, IReadOnlyList<string> builds, IReadOnlyDictionary<string, string> meter, int readings)
    {
        await using (app)
        {
            await app.StartAsync();
            var builders = builds.Select(build => new BuilderAtBench(new Uri(app.Urls.First()), build, meter)).ToList();
            await Task.WhenAll(builders.Select(builder => EnterAsync(builder, WarmingUp)));
            builders.ForEach(builder => builder.Forget());
            using var process = Process.GetCurrentProcess();
            var before = process.TotalProcessorTime;
            var watch = Stopwatch.StartNew();
            await Task.WhenAll(builders.Select(builder => EnterAsync(builder, readings)));
            var elapsed = watch.Elapsed;
            process.Refresh();
            var figures = LoadFigures.Of(
                [.. builders.SelectMany(builder => builder.Requests)], [.. builders.SelectMany(builder => builder.Entered)], elapsed, process.TotalProcessorTime - before);
            builders.ForEach(builder => builder.Dispose());
            return figures;
        }
    }

    private static async Task EnterAsync(BuilderAtBench builder, int readings)
    {
        for (var number = 0; number < readings; number++)
            if (!await builder.EnterAsync())
                throw new InvalidOperationException("The build has no check left; measure with fewer readings.");
    }
}
