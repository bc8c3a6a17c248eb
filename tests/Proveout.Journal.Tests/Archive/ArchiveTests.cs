using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Proveout.Journal.Trials;
using Proveout.Journal.Tests.Memory;

namespace Proveout.Journal.Tests.Archive;

public sealed class ArchiveTests
{
    private static readonly Task<byte[]> Sound = WriteAsync();

    [Fact]
    public async Task What_was_written_is_read_back_and_admitted_the_same()
    {
        var record = BuildArchive.Read(new MemoryStream(await Sound), ArchiveLimits.Usual);
        await using var journal = NewJournal();

        var admitted = await journal.AdmitAsync(record);

        Assert.Equal((12, 0), (admitted.Added, admitted.WereThere));
        Assert.Equal(KeptRecord.Entries.Select(draft => draft.Content), (await journal.ReadAsync(admitted.Build.Id)).Select(entry => entry.Content));
        Assert.Equal(SealStanding.Holds, Assert.Single(await journal.CheckSealsAsync(admitted.Build.Id, [], null)).Standing);
    }

    [Fact]
    public async Task The_same_record_gives_the_same_bytes()
    {
        var record = BuildArchive.Read(new MemoryStream(await Sound), ArchiveLimits.Usual);
        using var again = new MemoryStream();
        BuildArchive.Write(record, again);

        Assert.Equal(await Sound, again.ToArray());
    }

    [Fact]
    public async Task Any_unzip_and_any_JSON_reader_reads_it()
    {
        using var zip = new ZipArchive(new MemoryStream(await Sound));
        var manifest = Text(zip, "manifest.json");

        Assert.Equal(["manifest.json", "entries.jsonl", "seals.jsonl"], zip.Entries.Take(3).Select(entry => entry.FullName));
        Assert.Contains("\"format\": \"proveout-build-archive 1\"", manifest, StringComparison.Ordinal);
        Assert.Equal(12, Text(zip, "entries.jsonl").Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal(2, zip.Entries.Count(entry => entry.FullName.StartsWith("files/", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task An_archive_cut_off_at_any_length_is_refused_in_a_sentence()
    {
        var sound = await Sound;
        for (var length = 0; length < sound.Length; length += Math.Max(1, sound.Length / 200))
            Refused(sound[..length]);
        Refused(sound[..^1]);
    }

    [Fact]
    public async Task An_archive_with_any_byte_changed_is_refused_or_says_the_same()
    {
        var sound = await Sound;
        var expected = BuildArchive.Read(new MemoryStream(sound), ArchiveLimits.Usual);
        var random = new Random(20310314);
        var refused = 0;
        for (var turn = 0; turn < 400; turn++)
        {
            byte[] altered = [.. sound];
            altered[random.Next(altered.Length)] ^= (byte)random.Next(1, 256);
            try
            {
                var read = BuildArchive.Read(new MemoryStream(altered), ArchiveLimits.Usual);
                Assert.Equal((expected.Build, expected.LastHash, expected.Entries), (read.Build, read.LastHash, read.Entries));
                Assert.Equal(expected.Seals, read.Seals);
            }
            catch (ArchiveRefusedException)
            {
                refused++;
            }
        }
        Assert.InRange(refused, 200, 400);
    }

    [Theory]
    [InlineData("../../evil.txt")]
    [InlineData("/etc/passwd")]
    [InlineData("C:\\Windows\\evil.txt")]
    [InlineData("files/../../evil")]
    [InlineData("files/")]
    [InlineData("files/ABCDEF")]
    [InlineData("Manifest.json")]
    [InlineData("CON")]
    [InlineData("entries.jsonl/x")]
    public async Task A_name_that_no_archive_holds_is_refused_and_shown(string name) =>
        Assert.Contains($"`{name}`", Refused(Repacked(await Sound, name: name, text: "x")), StringComparison.Ordinal);

    [Fact]
    public async Task A_file_put_in_taken_out_doubled_or_exchanged_is_named()
    {
        var sound = await Sound;
        var stranger = "files/" + Fingerprint.OfText("stranger");

        Assert.Contains($"`{stranger}` is in the archive but not listed", Refused(Repacked(sound, name: stranger, text: "stranger")), StringComparison.Ordinal);
        Assert.Contains("`seals.jsonl` is listed in the manifest", Refused(Repacked(sound, without: "seals.jsonl")), StringComparison.Ordinal);
        Assert.Contains("holds no manifest.json", Refused(Repacked(sound, without: "manifest.json")), StringComparison.Ordinal);
        Assert.Contains("`entries.jsonl` twice", Refused(Repacked(sound, name: "entries.jsonl", text: "{}\n")), StringComparison.Ordinal);
        Assert.Contains("`entries.jsonl` is not what the manifest of the archive says", Refused(Repacked(sound, without: "entries.jsonl", name: "entries.jsonl", text: "{}\n")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Someone_who_changes_an_entry_and_the_manifest_with_it_is_found_by_the_chain()
    {
        var forged = WithEntries(await Sound, entries => entries.Replace("Blue instead of black.", "As drawn.", StringComparison.Ordinal));

        Assert.Contains("Entry 6 does not give its own hash", Refused(forged), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"kind\\\":\\\"deviation\\\"", "\"kind\\\":\\\"recipe\\\"")]
    [InlineData("\"sequence\":1,", "")]
    [InlineData("\"sequence\":1,", "\"sequence\":1,\"more\":2,")]
    [InlineData("\"sequence\":1,", "\"sequence\":null,")]
    [InlineData("\"person\":\"Ada Example\"", "\"person\":null")]
    [InlineData("\"sequence\":1,", "\"sequence\":[[[[[[[[[[1]]]]]]]]]],")]
    public async Task Lines_of_another_shape_are_refused_in_a_sentence(string from, string to)
    {
        var forged = WithEntries(await Sound, entries => entries.Replace(from, to, StringComparison.Ordinal));

        Assert.NotEqual(await Sound, forged);
        Refused(forged);
    }

    [Fact]
    public async Task A_later_format_is_refused_with_both_formats_named()
    {
        using var zip = new ZipArchive(new MemoryStream(await Sound));
        var later = Text(zip, "manifest.json").Replace("archive 1\",", "archive 2\",\n\"more\": {},", StringComparison.Ordinal);

        Assert.Equal(
            "The archive is of the format `proveout-build-archive 2`, and this Proveout reads `proveout-build-archive 1`. Read it with a newer Proveout.",
            Refused(Repacked(await Sound, without: "manifest.json", name: "manifest.json", text: later)));
    }

    [Fact]
    public async Task An_archive_that_unpacks_to_more_than_the_limits_is_refused_before_it_fills_memory()
    {
        var bomb = Repacked(await Sound, without: "entries.jsonl", name: "entries.jsonl", text: new string(' ', 50_000_000));
        var many = Repacked(await Sound, more: 300);

        Assert.Contains("`entries.jsonl` is more than 200 times as large as it is packed", Refused(bomb), StringComparison.Ordinal);
        Assert.Contains("unpacked it holds more than 1 MB", Refused(bomb, ArchiveLimits.Usual with { MostBytes = 1 << 20 }), StringComparison.Ordinal);
        Assert.Contains("lists more than 200 files", Refused(many, ArchiveLimits.Usual with { MostFiles = 200 }), StringComparison.Ordinal);
        Assert.Contains("it is larger than 0 MB", Refused(await Sound, ArchiveLimits.Usual with { MostArchiveBytes = 1000 }), StringComparison.Ordinal);
        Refused(Encoding.UTF8.GetBytes(new string('x', 100_000)));
    }

    [Fact]
    public async Task A_broken_record_is_not_exported()
    {
        var record = BuildArchive.Read(new MemoryStream(await Sound), ArchiveLimits.Usual);
        var broken = new BuildRecord(record.Stored, [.. record.StoredEntries.Skip(1)], record.Seals, record.Files);

        Assert.Contains("Entry 1 is missing", Assert.Throws<RecordRefusedException>(() => BuildArchive.Write(broken, new MemoryStream())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hostile_but_whole_record_is_admitted_only_as_the_journal_would_have_recorded_it()
    {
        var record = BuildArchive.Read(new MemoryStream(await Sound), ArchiveLimits.Usual);
        var script = EntryDraft.OfPhoto(Guid.NewGuid(), "Ada Example", "X1", "x.svg", "image/svg+xml", "<svg/>"u8.ToArray(), "");
        var entry = Chain.Rechained.After(record, script);
        var files = record.Files.Append(new(((PhotoAttached)script.Content).Sha256, script.FileBytes.ToArray())).ToDictionary();
        var hostile = new BuildRecord(record.Stored, [.. record.StoredEntries, entry], record.Seals, files);
        await using var journal = NewJournal();

        Assert.IsType<ChainWhole>(hostile.Verify());
        await Assert.ThrowsAsync<DraftRefusedException>(() => journal.AdmitAsync(hostile));
        Assert.Empty(await journal.ListBuildsAsync());
    }

    private static string Refused(byte[] archive, ArchiveLimits? limits = null)
    {
        var message = Assert.Throws<ArchiveRefusedException>(() => BuildArchive.Read(new MemoryStream(archive), limits ?? ArchiveLimits.Usual)).Message;
        Assert.Matches(new Regex(@"^[A-Z`].*\.$", RegexOptions.Singleline), message);
        return message;
    }

    private static StoreJournal NewJournal() => new(new MemoryStore(new MemoryStore.Shelf()), new SteppingClock());

    private static async Task<byte[]> WriteAsync()
    {
        await using var journal = NewJournal();
        await KeptRecord.WriteAsync(journal);
        using var key = SealKey.Make();
        await journal.SealAsync(KeptRecord.Builds[0].Id, key, "Ada Example");
        using var archive = new MemoryStream();
        BuildArchive.Write(await journal.TakeOutAsync(KeptRecord.Builds[0].Id), archive);
        return archive.ToArray();
    }

    private static byte[] WithEntries(byte[] sound, Func<string, string> change)
    {
        using var zip = new ZipArchive(new MemoryStream(sound));
        var before = Text(zip, "entries.jsonl");
        var after = change(before);
        var manifest = Text(zip, "manifest.json")
            .Replace(Fingerprint.OfText(before), Fingerprint.OfText(after), StringComparison.Ordinal)
            .Replace(FormattableString.Invariant($"\"length\": {Encoding.UTF8.GetByteCount(before)}"), FormattableString.Invariant($"\"length\": {Encoding.UTF8.GetByteCount(after)}"), StringComparison.Ordinal);
        return Repacked(Repacked(sound, without: "entries.jsonl", name: "entries.jsonl", text: after), without: "manifest.json", name: "manifest.json", text: manifest);
    }

    private static byte[] Repacked(byte[] sound, string? without = null, string? name = null, string text = "", int more = 0)
    {
        using var target = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(sound)))
        using (var to = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries.Where(entry => entry.FullName != without))
                Put(to, entry.FullName, entry.Open());
            if (name is not null)
                Put(to, name, new MemoryStream(Encoding.UTF8.GetBytes(text)));
            for (var number = 0; number < more; number++)
                Put(to, "files/" + Fingerprint.OfText(FormattableString.Invariant($"{number}")), new MemoryStream());
        }
        return target.ToArray();
    }

    private static void Put(ZipArchive zip, string name, Stream bytes)
    {
        using var packed = zip.CreateEntry(name).Open();
        bytes.CopyTo(packed);
    }

    private static string Text(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }
}
