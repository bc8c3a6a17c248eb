using System.Diagnostics;
using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Disks that are full or may only be read.</summary>
public sealed class SqliteDiskTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_full_disk_refuses_one_entry_in_a_sentence_and_takes_it_once_there_is_space()
    {
        using var writer = WriterProcess.Fill(_folder.Journal, bytes: 400_000);

        var lines = await writer.ReadToEndAsync();

        Assert.Equal(0, writer.ExitCode);
        Assert.Equal($"There is no space left for the journal {_folder.Journal}. Nothing was recorded; make space, then try again.", lines[^2]);
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
        var entries = await journal.ReadAsync(KeptRecord.Builds[0].Id);
        Assert.Equal([.. lines.Take(lines.Count - 2), lines[^1]], entries.Select(entry => FormattableString.Invariant($"{entry.Sequence} {entry.Hash}")));
        Assert.IsType<ChainWhole>(await journal.VerifyAsync(entries[0].BuildId));
    }

    [Fact]
    public async Task On_a_real_small_disk_what_was_acknowledged_before_it_was_full_is_whole_and_stays_readable()
    {
        using var disk = SmallDisk.MountOrSkip(_folder.Path, "400k");
        var path = Path.Combine(_folder.Path, "journal.db");
        var acknowledged = new List<Entry>();
        Build build;
        await using (var journal = await SqliteJournal.OpenAsync(path, new SteppingClock()))
        {
            build = await journal.StartBuildAsync(Drafts.Build());
            var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(async () =>
            {
                while (true)
                    acknowledged.Add(await journal.AppendAsync(build.Id, Drafts.Photo(Random(8000, acknowledged.Count))));
            });
            Assert.StartsWith($"There is no space left for the journal {path}.", refusal.Message, StringComparison.Ordinal);
            Assert.Equal(acknowledged, await journal.ReadAsync(build.Id));
        }

        await using var again = await SqliteJournal.OpenAsync(path, new SteppingClock());
        Assert.NotEmpty(acknowledged);
        Assert.Equal(acknowledged, await again.ReadAsync(build.Id));
        Assert.Equal(acknowledged.Count, Assert.IsType<ChainWhole>(await again.VerifyAsync(build.Id)).Entries);
    }

    [Fact]
    public async Task A_disk_that_may_only_be_read_gives_a_sentence_and_a_backup_on_it_can_be_restored_from()
    {
        var path = Path.Combine(_folder.Path, "journal.db");
        using var other = new TemporaryFolder();
        using var disk = SmallDisk.MountOrSkip(_folder.Path, "4m");
        var backup = Path.Combine(_folder.Path, "backup.db");
        await using (var journal = await SqliteJournal.OpenAsync(path, new SteppingClock()))
        {
            await KeptRecord.WriteAsync(journal);
            await journal.BackUpAsync(backup);
        }
        disk.MakeReadOnly();

        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => SqliteJournal.OpenAsync(path, new SteppingClock()));
        Assert.StartsWith($"The journal {path} cannot be opened for writing.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(2, (await JournalFiles.RestoreAsync(backup, other.Journal, TimeProvider.System)).Count);
    }

    private static byte[] Random(int count, int seed)
    {
        var bytes = new byte[count];
        new Random(seed).NextBytes(bytes);
        return bytes;
    }

    /// <summary>A file system in memory of a few kilobytes, which only root may mount.</summary>
    private sealed class SmallDisk(string path) : IDisposable
    {
        public static SmallDisk MountOrSkip(string path, string size)
        {
            Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root" && Run("mount", "-t", "tmpfs", "-o", $"size={size}", "tmpfs", path),
                "Only root of a Linux may mount a small disk.");
            return new SmallDisk(path);
        }

        public void MakeReadOnly() => Assert.True(Run("mount", "-o", "remount,ro", path));

        public void Dispose() => Run("umount", "--lazy", path);

        private static bool Run(string program, params string[] words)
        {
            using var process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
    }
}
