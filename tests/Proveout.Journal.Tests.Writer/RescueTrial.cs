using System.Diagnostics;
using System.Security.Cryptography;

namespace Proveout.Journal.Trials;

/// <summary>What the rescue of a large damaged journal takes. Made and rescued by two processes, so that the memory of the one is not that of the other.</summary>
internal static class RescueTrial
{
    private const int PageBytes = 4096;
    private const int PagesToEachFlip = 5;
    private const int PhotoBytes = 60_000;
    private const int EntriesOfBuild = 200;

    /// <summary>Notes of some 1.5 kB, every fourth entry a photograph, until the file has the size; then one flipped bit in every fifth page.</summary>
    public static async Task<string> MakeAsync(string path, int megabytes, int seed)
    {
        var random = new Random(seed);
        var (builds, entries) = (0, 0);
        await using (var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System))
            for (; new FileInfo(path).Length < megabytes * 1_000_000L; builds++)
            {
                var build = await journal.StartBuildAsync(new BuildDraft(Guid.NewGuid(), $"K-{builds}", "Small oven", Fingerprint.OfText("a machine"), "Ada Example"));
                for (var entry = 0; entry < EntriesOfBuild; entry++, entries++)
                    await journal.AppendAsync(build.Id, entry % 4 == 3 ? Photo(random) : Note(random));
            }

        var bytes = await File.ReadAllBytesAsync(path);
        var flips = 0;
        for (var page = 1; page < bytes.Length / PageBytes; page += PagesToEachFlip, flips++)
            bytes[(page * PageBytes) + random.Next(PageBytes)] ^= (byte)(1 << random.Next(8));
        await File.WriteAllBytesAsync(path, bytes);
        return $"{bytes.Length / 1e6:F1} MB, {builds} builds, {entries} entries, {flips} bits flipped";
    }

    /// <summary>Rescues it.</summary>
    public static async Task<string> RunAsync(string path, string target)
    {
        var start = Stopwatch.GetTimestamp();
        var before = GC.GetTotalAllocatedBytes(precise: true);
        var report = await JournalFiles.RescueAsync(path, target);
        var allocated = GC.GetTotalAllocatedBytes(precise: true) - before;
        using var process = Process.GetCurrentProcess();
        return $"{Stopwatch.GetElapsedTime(start).TotalSeconds:F1} s, {process.TotalProcessorTime.TotalSeconds:F1} s of processor, {allocated / 1e6:F0} MB allocated, "
            + $"{process.PeakWorkingSet64 / 1e6:F0} MB at most in memory; {report.Builds.Sum(build => build.Entries)} entries of {report.Builds.Sum(build => build.Recorded)}, {report.Mended.Count} mended, {report.Lost.Count} sentences on what is lost";
    }

    private static EntryDraft Note(Random random) =>
        new(Guid.NewGuid(), "Ada Example", "", new NoteWritten(string.Concat(Enumerable.Range(0, 250).Select(_ => $"{(char)random.Next('a', 'z')}{random.Next(10_000)} "))));

    private static EntryDraft Photo(Random random)
    {
        var bytes = new byte[PhotoBytes];
        random.NextBytes(bytes);
        return EntryDraft.OfPhoto(Guid.NewGuid(), "Ada Example", "X1", "inlet.jpg", "image/jpeg", bytes, Convert.ToHexString(SHA256.HashData(bytes)));
    }
}
