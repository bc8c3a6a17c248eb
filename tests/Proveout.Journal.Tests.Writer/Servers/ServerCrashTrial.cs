using System.Globalization;

namespace Proveout.Journal.Trials.Servers;

/// <summary>Benches append to one journal while its server is stopped at once, again and again; each sends again what was not acknowledged.</summary>
public static class ServerCrashTrial
{
    private const int Builds = 4;

    /// <summary>Runs it; null when PostgreSQL is not installed.</summary>
    public static async Task<ServerCrashResult?> RunAsync(int crashes, int benches, int seed)
    {
        using var server = PostgresServer.Begin();
        if (server is null)
            return null;
        var address = server.NewDatabase();
        var random = new Random(seed);
        await using var journal = await PostgresJournal.OpenAsync(address, TimeProvider.System);
        var builds = new List<Build>();
        for (var number = 1; number <= Builds; number++)
            builds.Add(await journal.StartBuildAsync(KeptRecord.Builds[0] with { Id = Guid.NewGuid(), Serial = $"{number}" }));
        using var enough = new CancellationTokenSource();
        var at = Enumerable.Range(0, benches).Select(bench => Task.Run(() => AppendAsync(journal, builds[bench % Builds].Id, bench, enough.Token))).ToList();
        for (var crash = 1; crash <= crashes; crash++)
        {
            await Task.Delay(random.Next(100, 600));
            server.Crash();
            server.Start();
        }
        await Task.Delay(200);
        await enough.CancelAsync();
        return await CheckAsync(journal, builds, crashes, await Task.WhenAll(at));
    }

    private static async Task<BenchLog> AppendAsync(IJournal journal, Guid build, int bench, CancellationToken enough)
    {
        var log = new BenchLog([], 0, 0);
        for (var number = 1; !enough.IsCancellationRequested; number++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"bench {bench}, entry {number}");
            var draft = new EntryDraft(Guid.NewGuid(), "Ada Example", "", new NoteWritten(name));
            Entry? entry = null;
            for (var tries = 1; entry is null; tries++)
                try
                {
                    entry = await journal.AppendAsync(build, draft, CancellationToken.None);
                }
                catch (JournalUnavailableException refusal)
                {
                    var unanswered = refusal.Message.Contains("may be recorded or not", StringComparison.Ordinal);
                    log = log with { Refused = log.Refused + 1, Unanswered = log.Unanswered + (unanswered ? 1 : 0) };
                    await Task.Delay(20, CancellationToken.None);
                }
            log.Acknowledged.Add(Writing.Line(entry));
        }
        return log;
    }

    private static async Task<ServerCrashResult> CheckAsync(IJournal journal, IReadOnlyList<Build> builds, int crashes, IReadOnlyList<BenchLog> logs)
    {
        var entries = new List<Entry>();
        var notWhole = 0;
        foreach (var build in builds)
        {
            entries.AddRange(await journal.ReadAsync(build.Id));
            notWhole += await journal.VerifyAsync(build.Id) is ChainWhole ? 0 : 1;
        }
        notWhole += (await journal.InspectAsync()).Count;
        var there = entries.Select(Writing.Line).ToHashSet();
        var acknowledged = logs.SelectMany(log => log.Acknowledged).ToList();
        return new ServerCrashResult(
            crashes, acknowledged.Count, acknowledged.Count(line => !there.Contains(line)), entries.Count - acknowledged.Count, notWhole,
            logs.Sum(log => log.Refused), logs.Sum(log => log.Unanswered));
    }

    private sealed record BenchLog(List<string> Acknowledged, int Refused, int Unanswered);
}

/// <summary>What came of it.</summary>
/// <param name="Crashes">Times that the server was stopped at once.</param>
/// <param name="Acknowledged">Entries that were acknowledged, at the first sending or a later one.</param>
/// <param name="Lost">Acknowledged entries that are not there.</param>
/// <param name="Surplus">Entries that are there beside those; every bench sent again until it was acknowledged, so that each would be a doubled one.</param>
/// <param name="NotWhole">Records that are not whole at the end, and findings of the database.</param>
/// <param name="Refused">Sendings that ended in a sentence.</param>
/// <param name="Unanswered">Of those, the ones that may have been recorded.</param>
public sealed record ServerCrashResult(int Crashes, int Acknowledged, int Lost, int Surplus, int NotWhole, int Refused, int Unanswered)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Crashes} times stopped at once, {Acknowledged} entries acknowledged: {Lost} lost, {Surplus} doubled, {NotWhole} not whole; {Refused} sendings ended in a sentence, {Unanswered} of them after the commit was sent");
}
