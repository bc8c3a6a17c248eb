using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Rescue;

/// <summary>Files that were mauled in any way: rescue neither fails nor makes anything up.</summary>
public sealed class HostileFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Whatever_was_done_to_a_file_each_entry_rescued_is_one_that_was_recorded_and_each_that_is_missing_is_counted()
    {
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
            await KeptRecord.WriteAsync(journal);
        var sound = await File.ReadAllBytesAsync(_folder.Journal);
        HashSet<Entry> recorded;
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System))
            recorded = [.. await journal.ReadAsync(KeptRecord.Builds[0].Id)];
        var random = new Random(20310314);
        var mostRescued = 0;

        for (var turn = 0; turn < 40; turn++)
        {
            var mauled = Maul(sound, random);
            var (path, target) = (Path.Combine(_folder.Path, $"mauled-{turn}.db"), Path.Combine(_folder.Path, $"rescued-{turn}.db"));
            await File.WriteAllBytesAsync(path, mauled);

            var report = await JournalFiles.RescueAsync(path, target);

            await using var journal = await SqliteJournal.OpenAsync(target, TimeProvider.System);
            var rescued = report.Builds.Any(build => build.Id == $"{KeptRecord.Builds[0].Id}") ? await journal.ReadAsync(KeptRecord.Builds[0].Id) : [];
            Assert.Subset(recorded, rescued.ToHashSet());
            Assert.Equal(mauled, await File.ReadAllBytesAsync(path));
            if (rescued.Count < recorded.Count && rescued.Count > 0)
                Assert.NotEmpty(report.Lost);
            mostRescued = Math.Max(mostRescued, rescued.Count);
        }
        Assert.Equal(recorded.Count, mostRescued);
    }

    [Fact]
    public async Task Bytes_that_look_like_rows_without_end_take_neither_time_nor_memory()
    {
        // Heads of rows that claim a gigabyte, one at each place.
        var bytes = new byte[400_000];
        for (var at = 0; at + 9 < bytes.Length; at += 9)
            ((ReadOnlySpan<byte>)[8, 0x81, 0x0D, 0x87, 0xFF, 0xFF, 0xFF, 0x7E, 0]).CopyTo(bytes.AsSpan(at));
        await File.WriteAllBytesAsync(_folder.Journal, bytes);

        Assert.Empty((await JournalFiles.SurveyAsync(_folder.Journal).WaitAsync(TimeSpan.FromSeconds(20))).Builds);
    }

    private static byte[] Maul(byte[] sound, Random random)
    {
        byte[] mauled = [.. sound];
        for (var wound = random.Next(1, 12); wound > 0; wound--)
        {
            var at = random.Next(mauled.Length);
            var count = Math.Min(random.Next(1, 3000), mauled.Length - at);
            switch (random.Next(4))
            {
                case 0:
                    random.NextBytes(mauled.AsSpan(at, count));
                    break;
                case 1:
                    mauled.AsSpan(at, count).Clear();
                    break;
                case 2:
                    mauled.AsSpan(random.Next(mauled.Length - count), count).ToArray().CopyTo(mauled.AsSpan(at));
                    break;
                default:
                    mauled[at] ^= (byte)random.Next(1, 256);
                    break;
            }
        }
        return random.Next(4) == 0 ? mauled[..random.Next(mauled.Length)] : mauled;
    }
}
