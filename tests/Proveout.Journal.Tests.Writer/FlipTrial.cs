using System.Globalization;

namespace Proveout.Journal.Trials;

/// <summary>Flips single bits of a journal's file, anywhere in it, and looks whether a rescue brings everything back but what the bit was in.</summary>
public static class FlipTrial
{
    /// <summary>Runs it.</summary>
    public static async Task<FlipResult> RunAsync(int flips, int seed)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-flips-");
        try
        {
            var sound = Path.Combine(folder.FullName, "sound.db");
            await using (var journal = await SqliteJournal.OpenAsync(sound, TimeProvider.System))
                await KeptRecord.WriteAsync(journal);
            var bytes = await File.ReadAllBytesAsync(sound);
            var before = (await ReadAsync(sound)).Items;
            var random = new Random(seed);
            var result = new FlipResult(0, 0, 0, 0, 0, 0);
            for (var flip = 0; flip < flips; flip++)
            {
                var bit = random.NextInt64(bytes.Length * 8L);
                bytes[bit / 8] ^= (byte)(1 << (int)(bit % 8));
                result = await RescueAsync(Path.Combine(folder.FullName, "flipped"), bytes, before, result);
                bytes[bit / 8] ^= (byte)(1 << (int)(bit % 8));
            }
            return result;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<FlipResult> RescueAsync(string folder, byte[] bytes, HashSet<string> before, FlipResult result)
    {
        Directory.CreateDirectory(folder);
        try
        {
            var (damaged, target) = (Path.Combine(folder, "journal.db"), Path.Combine(folder, "rescued.db"));
            await File.WriteAllBytesAsync(damaged, bytes);
            var report = await JournalFiles.RescueAsync(damaged, target);
            var (after, _) = await ReadAsync(target);
            var lost = before.Count(item => !after.Contains(item));
            var seen = await ReadAsync(damaged);
            var isUnseen = !seen.IsReported && !seen.Items.SetEquals(before);
            return new FlipResult(
                result.Flips + 1,
                result.Reported + (seen.IsReported ? 1 : 0),
                result.Mended + (report.Mended.Count > 0 ? 1 : 0),
                Math.Max(result.MostLost, lost),
                result.LostUnnamed + (lost > 0 && report.Lost.Count == 0 ? 1 : 0),
                result.Unseen + (isUnseen ? 1 : 0));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Everything that is recorded, an item for each build, entry and file; and whether the journal itself says that something is wrong.</summary>
    private static async Task<(HashSet<string> Items, bool IsReported)> ReadAsync(string path)
    {
        var items = new HashSet<string>();
        var isReported = false;
        try
        {
            await using var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System);
            isReported = (await journal.InspectAsync()).Count > 0;
            foreach (var build in await journal.ListBuildsAsync())
            {
                items.Add($"{build}");
                isReported |= await journal.VerifyAsync(build.Id) is ChainBroken;
                foreach (var entry in await journal.ReadAsync(build.Id))
                {
                    items.Add($"{entry.Hash} {entry.Sequence} {entry.Person} {entry.Content}");
                    isReported |= !await AddFileAsync(journal, entry, items);
                }
            }
        }
        catch (JournalException)
        {
            isReported = true;
        }
        return (items, isReported);
    }

    private static async Task<bool> AddFileAsync(IJournal journal, Entry entry, HashSet<string> items)
    {
        try
        {
            if (entry.Content is PhotoAttached photo && await journal.ReadPhotoAsync(entry.BuildId, photo.Sha256) is { } bytes)
                items.Add(Fingerprint.OfBytes(bytes.Bytes.Span));
            if (entry.Content is MeasurementTaken taken && await journal.ReadDataFileAsync(entry.BuildId, taken.Sha256) is { } file)
                items.Add(Fingerprint.OfBytes(file.Bytes.Span));
            return true;
        }
        catch (JournalDamagedException)
        {
            return false;
        }
    }
}

/// <summary>What came of it.</summary>
/// <param name="Flips">Single bits flipped, each in a file otherwise whole.</param>
/// <param name="Reported">Times that the journal itself said that something is wrong.</param>
/// <param name="Mended">Times that the bit was put back.</param>
/// <param name="MostLost">The most records of a build, entries and files that one bit cost.</param>
/// <param name="LostUnnamed">Times that something was lost and the report named nothing.</param>
/// <param name="Unseen">Times that the journal read otherwise than before and did not say so.</param>
public sealed record FlipResult(int Flips, int Reported, int Mended, int MostLost, int LostUnnamed, int Unseen)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Flips} bits flipped: {Reported} reported, {Mended} put back, at most {MostLost} lost by one bit, {LostUnnamed} lost without being named, {Unseen} unseen");
}
