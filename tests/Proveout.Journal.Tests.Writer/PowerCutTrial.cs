using System.Globalization;
using Proveout.Journal.Trials.Disk;

namespace Proveout.Journal.Trials;

/// <summary>
/// Records what SQLite asks of the disk over the life of a journal, cuts the power at moments of that life, and opens the journal on what the disk
/// may then hold.
/// </summary>
public static class PowerCutTrial
{
    /// <param name="cuts">How many.</param>
    /// <param name="seed">Chooses the moments and what is lost.</param>
    /// <param name="life">What is recorded.</param>
    /// <param name="disksThatLie">Whether the disk forgets its syncs: then entries must be lost, or this trial could not tell.</param>
    public static async Task<PowerCutResult> RunAsync(int cuts, int seed, Life life, bool disksThatLie)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-power-");
        try
        {
            var events = await RecordAsync(folder.FullName, life);
            var random = new Random(seed);
            var moments = Moments(events, cuts, random);
            var disk = new UnpluggedDisk(syncs: !disksThatLie);
            var acknowledged = new List<string>();
            Backup? backup = null;
            var result = new PowerCutResult(0, events.Count, events.OfType<DiskEvent.Acknowledged>().Count(), 0, 0, 0, 0);
            var taken = 0;
            foreach (var moment in moments)
            {
                for (; taken < moment; taken++)
                {
                    disk.Take(events[taken]);
                    if (events[taken] is not DiskEvent.Acknowledged { Line: var line })
                        continue;
                    if (line.StartsWith(Writing.BackupMark, StringComparison.Ordinal))
                        backup = new Backup(line[Writing.BackupMark.Length..], acknowledged.Count);
                    else
                        acknowledged.Add(line);
                }
                result = await OpenAfterAsync(Path.Combine(folder.FullName, "after"), disk.After(random), acknowledged, backup, result);
            }
            return result;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Anywhere, but one in ten right after a backup was acknowledged and one in ten right after the write-ahead file was begun anew: few events lie
    // there, and it is where a name, a removal or the head of the file may not be synced yet.
    private static List<int> Moments(IReadOnlyList<DiskEvent> events, int cuts, Random random)
    {
        var backups = After(events, each => each is DiskEvent.Acknowledged { Line: var line } && line.StartsWith(Writing.BackupMark, StringComparison.Ordinal));
        var beginnings = After(events, each => each is DiskEvent.Written { File: "journal.db-wal", Offset: 0 });
        return
        [
            .. Enumerable.Range(0, cuts).Select(cut => (cut % 10) switch
            {
                0 => backups[cut / 10 % backups.Count],
                1 => beginnings[cut / 10 % beginnings.Count],
                _ => random.Next(1, events.Count + 1),
            }).Order(),
        ];
    }

    private static List<int> After(IReadOnlyList<DiskEvent> events, Func<DiskEvent, bool> isOne) =>
        [.. Enumerable.Range(1, events.Count).Where(count => isOne(events[count - 1]))];

    private static async Task<IReadOnlyList<DiskEvent>> RecordAsync(string folder, Life life)
    {
        var log = Path.Combine(folder, "disk.log");
        using var writer = WriterProcess.Record(Path.Combine(folder, "journal.db"), log, life.Sessions, life.Entries);
        await writer.ReadToEndAsync();
        return writer.ExitCode == 0 ? DiskLogWriter.Read(log) : throw new InvalidOperationException("The life of the journal could not be recorded.");
    }

    private static async Task<PowerCutResult> OpenAfterAsync(
        string folder, IEnumerable<(string Name, byte[] Bytes)> files, IReadOnlyCollection<string> acknowledged, Backup? backup, PowerCutResult result)
    {
        Directory.CreateDirectory(folder);
        try
        {
            foreach (var (name, bytes) in files)
                await File.WriteAllBytesAsync(Path.Combine(folder, name), bytes);
            var (there, isWhole) = await ReadAsync(Path.Combine(folder, "journal.db"));
            var isBackedUp = backup is null || await ReadAsync(Path.Combine(folder, backup.File)) is { IsWhole: true } copy && copy.Lines.Count == backup.Entries;
            return result with
            {
                Cuts = result.Cuts + 1,
                BackupsLost = result.BackupsLost + (isBackedUp ? 0 : 1),
                Lost = result.Lost + acknowledged.Count(line => !there.Contains(line)),
                Broken = result.Broken + (isWhole ? 0 : 1),
                MostUnacknowledged = Math.Max(result.MostUnacknowledged, there.Count - acknowledged.Count),
            };
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A backup that was said to be made, and how many entries there were then.</summary>
    private sealed record Backup(string File, int Entries);

    private static async Task<(HashSet<string> Lines, bool IsWhole)> ReadAsync(string path)
    {
        try
        {
            await using var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System);
            if (await journal.FindBuildAsync(KeptRecord.Builds[0].Id) is not { } build)
                return ([], (await journal.InspectAsync()).Count == 0);
            var lines = (await journal.ReadAsync(build.Id)).Select(Writing.Line).ToHashSet();
            var isWhole = await journal.VerifyAsync(build.Id) is ChainWhole && (await journal.InspectAsync()).Count == 0;
            return (lines, isWhole);
        }
        catch (JournalException refusal)
        {
            Console.Error.WriteLine(refusal.Message);
            return ([], false);
        }
    }
}

/// <summary>What came of it.</summary>
/// <param name="Cuts">Times that the power was cut.</param>
/// <param name="Events">Writes, syncs, cuts and removals that the disk was asked for.</param>
/// <param name="Entries">Entries acknowledged over the life.</param>
/// <param name="Lost">Acknowledged entries that were not there afterwards, over all cuts.</param>
/// <param name="Broken">Cuts after which the journal could not be opened or was not whole.</param>
/// <param name="BackupsLost">Cuts after which the last backup that was acknowledged was not there or not whole.</param>
/// <param name="MostUnacknowledged">The most entries that were there after a cut without having been acknowledged.</param>
public sealed record PowerCutResult(int Cuts, int Events, int Entries, int Lost, int Broken, int BackupsLost, int MostUnacknowledged)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Cuts} power cuts over {Events} events of a disk and {Entries} entries: {Lost} lost, {Broken} not whole, {BackupsLost} backups lost, at most {MostUnacknowledged} not acknowledged");
}
