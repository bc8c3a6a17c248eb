using Proveout.Journal.Rescue;
using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteRescueTests : IDisposable
{
    private static readonly Guid Build = KeptRecord.Builds[0].Id;
    private readonly TemporaryFolder _folder = new();

    private string Rescued => Path.Combine(_folder.Path, "rescued.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_sound_journal_is_rescued_whole_and_nothing_is_named()
    {
        await WriteAsync();

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        Assert.Empty(report.Lost);
        Assert.Empty(report.Mended);
        Assert.Equal([("K-1", 12, 12L), ("K-2", 0, 0L)], report.Builds.Select(build => (build.Serial, build.Entries, build.Recorded)));
        await using var before = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
        await using var after = await SqliteJournal.OpenAsync(Rescued, TimeProvider.System);
        Assert.Equal(await before.ReadAsync(Build), await after.ReadAsync(Build));
        Assert.Equal(await before.VerifyAsync(Build), await after.VerifyAsync(Build));
        Assert.Equal(SealStanding.Holds, Assert.Single(await after.CheckSealsAsync(Build, [], null)).Standing);
        Assert.Empty(await after.InspectAsync());
        Assert.Equal(13, (await after.AppendAsync(Build, Drafts.Note("afterwards"))).Sequence);
    }

    [Fact]
    public async Task A_flipped_bit_in_an_entry_is_put_back()
    {
        await WriteAsync();
        Overwrite("Blue instead of black."u8, at => (byte)(at ^ 4), count: 1, all: true);

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        Assert.Empty(report.Lost);
        Assert.Equal($"Entry 6 of build {Build} had one flipped bit, which was put back; its hash proves it.", Assert.Single(report.Mended));
        await using var after = await SqliteJournal.OpenAsync(Rescued, TimeProvider.System);
        Assert.IsType<ChainWhole>(await after.VerifyAsync(Build));
    }

    [Fact]
    public async Task An_entry_that_is_destroyed_is_named_with_what_can_be_made_out_and_all_others_are_saved()
    {
        await WriteAsync();
        Overwrite("Blue instead of black."u8, _ => (byte)'x', count: 12, all: true);

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        var lost = Assert.Single(report.Lost);
        Assert.StartsWith($"Entry 6 of build K-1 ({Build}) is lost. What can be made out, and is not proven: ", lost, StringComparison.Ordinal);
        Assert.Contains("xxxxxxxxxxxx of black.", lost, StringComparison.Ordinal);
        await using var after = await SqliteJournal.OpenAsync(Rescued, TimeProvider.System);
        Assert.Equal([1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12], (await after.ReadAsync(Build)).Select(entry => entry.Sequence));
        var broken = Assert.IsType<ChainBroken>(await after.VerifyAsync(Build));
        Assert.Equal((6, ChainPart.Order, Tampering.Removed), (broken.Sequence, broken.Part, broken.How));
        Assert.Equal(13, (await after.AppendAsync(Build, Drafts.Note("afterwards"))).Sequence);
        await Assert.ThrowsAsync<KeyReusedException>(() => after.AppendAsync(Build, KeptRecord.Entries[0] with { Person = "Bo Example" }));
    }

    [Fact]
    public async Task A_photograph_and_the_record_of_a_build_that_are_destroyed_are_named_and_the_entries_can_still_be_read()
    {
        await WriteAsync();
        Overwrite(KeptRecord.Entries[6].FileBytes.Span[15_000..15_020], at => (byte)~at, count: 20);
        Overwrite("K-1"u8, _ => (byte)'?', count: 3, all: true);

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        Assert.Equal(
            [
                $"The record of build ??? ({Build}) itself was altered: its serial number, machine, builder or start may not be what was recorded.",
                $"The photograph inlet.jpg of entry 7 of build ??? ({Build}) is lost.",
            ],
            report.Lost);
        await using var after = await SqliteJournal.OpenAsync(Rescued, TimeProvider.System);
        Assert.Equal(12, (await after.ReadAsync(Build)).Count);
        Assert.Equal((0, ChainPart.BuildRecord), Assert.IsType<ChainBroken>(await after.VerifyAsync(Build)) is var broken ? (broken.Sequence, broken.Part) : default);
    }

    [Fact]
    public async Task A_build_without_entries_whose_record_is_destroyed_is_named_all_the_same()
    {
        await WriteAsync();
        // The head of the row: nothing looks like a record any more; the end of 0 entries is left.
        Overwrite([.. System.Text.Encoding.UTF8.GetBytes($"{KeptRecord.Builds[1].Id}K-2")], _ => 0, count: 30, all: true);

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        Assert.Contains(report.Lost, sentence => sentence.Contains($"{KeptRecord.Builds[1].Id}", StringComparison.Ordinal) && sentence.Contains("itself", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_header_list_of_tables_and_inner_pages_every_entry_is_still_found()
    {
        await WriteAsync();
        var bytes = await File.ReadAllBytesAsync(_folder.Journal);
        // The whole first page, and of every other page the header with its kind and the places of its cells.
        Array.Fill(bytes, (byte)0x5A, 0, 4096);
        for (var page = 4096; page < bytes.Length; page += 4096)
            if (bytes[page] is 2 or 5 or 10 or 13)
                Array.Fill(bytes, (byte)0x5A, page, 60);
        await File.WriteAllBytesAsync(_folder.Journal, bytes);
        await Assert.ThrowsAnyAsync<JournalException>(() => SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System));

        var report = await JournalFiles.RescueAsync(_folder.Journal, Rescued);

        Assert.Empty(report.Lost);
        Assert.Equal(12, report.Builds[0].Entries);
        await using var after = await SqliteJournal.OpenAsync(Rescued, TimeProvider.System);
        Assert.IsType<ChainWhole>(await after.VerifyAsync(Build));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(18)]
    [InlineData(40)]
    [InlineData(60_000)]
    public async Task Entries_that_lie_behind_damage_in_the_file_written_ahead_are_neither_dropped_nor_lost(int place)
    {
        var (path, ahead) = (Path.Combine(_folder.Path, "copy.db"), Path.Combine(_folder.Path, "copy.db-wal"));
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        {
            await KeptRecord.WriteAsync(journal);
            // As a computer that went down leaves them.
            File.Copy(_folder.Journal, path);
            File.Copy(_folder.Journal + "-wal", ahead);
        }
        var bytes = await File.ReadAllBytesAsync(ahead);
        bytes[place] ^= 1;
        await File.WriteAllBytesAsync(ahead, bytes);

        var refusal = await Assert.ThrowsAsync<JournalDamagedException>(() => SqliteJournal.OpenAsync(path, TimeProvider.System));
        Assert.StartsWith($"The file {path}-wal, which holds the newest entries of the journal, is damaged in the middle.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(ahead));

        var report = await JournalFiles.RescueAsync(path, Rescued);
        Assert.Empty(report.Lost);
        Assert.Equal(12, report.Builds[0].Entries);
    }

    [Fact]
    public async Task A_file_written_ahead_that_ends_within_a_transaction_is_no_damage()
    {
        var path = Path.Combine(_folder.Path, "copy.db");
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        {
            await KeptRecord.WriteAsync(journal);
            File.Copy(_folder.Journal, path);
            await File.WriteAllBytesAsync(path + "-wal", (await File.ReadAllBytesAsync(_folder.Journal + "-wal"))[..^3000]);
        }

        Assert.False(WriteAheadFile.Beside(path)!.HidesCommitted());
        await using var again = await SqliteJournal.OpenAsync(path, TimeProvider.System);
        Assert.Equal(11, Assert.IsType<ChainWhole>(await again.VerifyAsync(Build)).Entries);
    }

    [Fact]
    public async Task A_file_that_is_no_journal_gives_nothing_and_a_file_that_is_not_there_a_sentence()
    {
        await File.WriteAllTextAsync(_folder.Journal, string.Concat(Enumerable.Repeat("Shopping: bolts, washers, tape.\n", 640)));

        Assert.Empty((await JournalFiles.SurveyAsync(_folder.Journal)).Builds);
        await Assert.ThrowsAsync<JournalUnavailableException>(() => JournalFiles.SurveyAsync(Rescued));
    }

    private async Task WriteAsync()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        await KeptRecord.WriteAsync(journal);
        using var key = SealKey.Make();
        await journal.SealAsync(Build, key, "Ada Example");
    }

    private void Overwrite(ReadOnlySpan<byte> text, Func<byte, byte> with, int count, bool all = false)
    {
        var bytes = File.ReadAllBytes(_folder.Journal);
        var found = 0;
        for (var at = bytes.AsSpan().IndexOf(text); at >= 0 && (all || found == 0); found++)
        {
            for (var offset = 0; offset < count; offset++)
                bytes[at + offset] = with(bytes[at + offset]);
            var next = bytes.AsSpan(at + count).IndexOf(text);
            at = next < 0 ? -1 : at + count + next;
        }
        Assert.True(found > 0);
        File.WriteAllBytes(_folder.Journal, bytes);
    }
}
