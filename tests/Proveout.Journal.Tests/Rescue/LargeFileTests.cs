using System.Buffers.Binary;
using Proveout.Journal.Rescue;

namespace Proveout.Journal.Tests.Rescue;

/// <summary>What the rescue of a file takes grows with the file and with nothing else.</summary>
public sealed class LargeFileTests : IDisposable
{
    private const int PageBytes = 4096;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_bit_flipped_in_every_fifth_page_costs_no_more_memory_than_a_few_times_the_file()
    {
        await FillAsync();
        var bytes = await File.ReadAllBytesAsync(_folder.Journal);
        var random = new Random(20310314);
        for (var page = 1; page < bytes.Length / PageBytes; page += 5)
            bytes[(page * PageBytes) + random.Next(PageBytes)] ^= (byte)(1 << random.Next(8));
        await File.WriteAllBytesAsync(_folder.Journal, bytes);

        // All of it happens on this thread, so that what other tests allocate does not count.
        var before = GC.GetAllocatedBytesForCurrentThread();
        using var salvage = Salvage.Of(_folder.Journal);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.NotEmpty(salvage.Mended);
        Assert.InRange(allocated, 1, 8L * bytes.Length);
    }

    [Fact]
    public async Task Files_are_not_held_but_read_when_they_are_asked_for_and_are_what_was_attached()
    {
        var photo = await FillAsync();
        using var salvage = Salvage.Of(_folder.Journal);
        var sha256 = Fingerprint.OfBytes(photo);
        Assert.True(salvage.Files[sha256].Local.Length < PageBytes);
        Assert.Equal(photo, salvage.ReadFile(sha256));
        Assert.Null(salvage.ReadFile(Fingerprint.OfText("another")));
    }

    [Fact]
    public async Task Bytes_that_changed_since_they_were_found_are_not_taken_for_those_that_were()
    {
        var photo = await FillAsync();
        using var salvage = Salvage.Of(_folder.Journal);
        await using (var file = new FileStream(_folder.Journal, FileMode.Open, FileAccess.Write, FileShare.ReadWrite))
            for (var page = 1; page < file.Length / PageBytes; page++)
            {
                file.Position = (page * PageBytes) + 2000;
                file.WriteByte(0x5A);
                file.WriteByte(0xA5);
            }

        Assert.Throws<JournalUnavailableException>(() => salvage.ReadFile(Fingerprint.OfBytes(photo)));
    }

    [Fact]
    public async Task Rows_without_number_that_all_claim_the_same_pages_are_not_put_together_without_end()
    {
        const int Claimed = 120_000, Pages = 60;
        var layout = new PageLayout(PageBytes);
        byte[] head = [6, 0x81, 0x0D, 0x80 | ((12 + (2 * Claimed)) >> 14), 0x80 | (((12 + (2 * Claimed)) >> 7) & 0x7F), (12 + (2 * Claimed)) & 0x7F];
        var local = layout.Local(head.Length + 64 + Claimed, layout.MostInTable);
        var rowsOfPage = PageBytes / (local + 4);
        // Every page but the first is full of heads of rows that go on in the first one, which goes on in itself.
        var bytes = new byte[PageBytes * (Pages + 1)];
        BinaryPrimitives.WriteInt32BigEndian(bytes, 1);
        for (var row = 0; row < rowsOfPage * Pages; row++)
        {
            var at = PageBytes + (row / rowsOfPage * PageBytes) + (row % rowsOfPage * (local + 4));
            head.CopyTo(bytes, at);
            BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at + head.Length), row);
            BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at + local), 1);
        }

        await File.WriteAllBytesAsync(_folder.Journal, bytes);

        using var salvage = Salvage.Of(_folder.Journal);
        Assert.True(rowsOfPage * Pages > 100);
        Assert.InRange(salvage.Files.Count, 1, 100);
    }

    /// <summary>Sixty notes and a photograph.</summary>
    private async Task<byte[]> FillAsync()
    {
        var photo = new byte[300_000];
        new Random(7).NextBytes(photo);
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        for (var number = 0; number < 60; number++)
            await journal.AppendAsync(build.Id, Drafts.Note($"{number} " + new string((char)('a' + (number % 26)), 2500)));
        await journal.AppendAsync(build.Id, Drafts.Photo(photo));
        return photo;
    }
}
