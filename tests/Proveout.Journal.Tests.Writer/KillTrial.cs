using System.Globalization;

namespace Proveout.Journal.Trials;

/// <summary>Several processes append to one journal; one after the other is killed (SIGKILL) at a moment nobody chose and another takes its place.</summary>
public static class KillTrial
{
    /// <summary>Runs it.</summary>
    public static async Task<KillResult> RunAsync(int kills, int writersAtOnce, int seed)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-kills-");
        var path = Path.Combine(folder.FullName, "journal.db");
        try
        {
            var random = new Random(seed);
            Guid build;
            await using (var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System))
                build = (await journal.StartBuildAsync(KeptRecord.Builds[0])).Id;
            var result = new KillResult(0, 0, 0, 0, 0, 0);
            var acknowledged = new HashSet<string>();
            for (var round = 1; result.Kills < kills; round++)
            {
                var writers = Math.Min(writersAtOnce, kills - result.Kills);
                var lines = await AppendUntilKilledAsync(path, build, round, writers, random);
                acknowledged.UnionWith(lines);
                result = await CheckAsync(path, build, acknowledged, result with { Kills = result.Kills + writers, Acknowledged = acknowledged.Count });
            }
            return result;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<IEnumerable<string>> AppendUntilKilledAsync(string path, Guid build, int round, int count, Random random)
    {
        var writers = Enumerable.Range(1, count).Select(number => WriterProcess.Append(path, build, $"writer {round}.{number}", int.MaxValue)).ToList();
        try
        {
            // The first line says that a writer is at work; then a moment somewhere within the next appends, not right after an acknowledgement.
            var first = await Task.WhenAll(writers.Select(writer => writer.ReadLineAsync()));
            var lines = new List<string>(first.Select(line => line ?? throw new InvalidOperationException("A writer ended before it was killed.")));
            foreach (var writer in writers)
            {
                await Task.Delay(random.Next(0, 40));
                Thread.SpinWait(random.Next(200_000));
                writer.Kill();
            }
            foreach (var writer in writers)
                lines.AddRange(await writer.ReadToEndAsync());
            return lines;
        }
        finally
        {
            writers.ForEach(writer => writer.Dispose());
        }
    }

    private static async Task<KillResult> CheckAsync(string path, Guid build, HashSet<string> acknowledged, KillResult result)
    {
        await using var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System);
        var entries = await journal.ReadAsync(build);
        var there = entries.Select(Writing.Line).ToHashSet();
        var isWhole = await journal.VerifyAsync(build) is ChainWhole && (await journal.InspectAsync()).Count == 0;
        return result with
        {
            Lost = acknowledged.Count(line => !there.Contains(line)),
            Doubled = entries.Count - entries.DistinctBy(entry => entry.Key).Count(),
            NotWhole = result.NotWhole + (isWhole ? 0 : 1),
            Unacknowledged = entries.Count - acknowledged.Count,
        };
    }
}

/// <summary>What came of it.</summary>
/// <param name="Kills">Processes killed.</param>
/// <param name="Acknowledged">Entries that were acknowledged.</param>
/// <param name="Lost">Acknowledged entries that are not there.</param>
/// <param name="Doubled">Entries that are there twice.</param>
/// <param name="NotWhole">Times that the journal was not whole after a kill.</param>
/// <param name="Unacknowledged">Entries that are there though their writer was killed before it could say so; at most one for each kill.</param>
public sealed record KillResult(int Kills, int Acknowledged, int Lost, int Doubled, int NotWhole, int Unacknowledged)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Kills} processes killed, {Acknowledged} entries acknowledged: {Lost} lost, {Doubled} doubled, {NotWhole} times not whole, {Unacknowledged} recorded but not acknowledged");
}
