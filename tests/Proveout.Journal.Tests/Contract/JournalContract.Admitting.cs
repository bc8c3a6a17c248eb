using Proveout.Journal.Tests.Memory;

namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_record_taken_out_and_admitted_elsewhere_is_the_same_with_its_times_hashes_files_and_seals()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        using var key = SealKey.Make();
        await source.SealAsync(build.Id, key, "Ada Example");
        await using var journal = await OpenAsync(TimeProvider.System);

        var admitted = await journal.AdmitAsync(await source.TakeOutAsync(build.Id));

        Assert.Equal((build, 0, 3), (admitted.Build, admitted.WereThere, admitted.Added));
        Assert.Equal(build, await journal.FindBuildAsync(build.Id));
        Assert.Equal(await source.ReadAsync(build.Id), await journal.ReadAsync(build.Id));
        Assert.Equal([1, 2, 3], (await journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes([1, 2, 3])))!.Bytes.ToArray());
        Assert.Equal(await source.VerifyAsync(build.Id), await journal.VerifyAsync(build.Id));
        Assert.Equal(SealStanding.Holds, Assert.Single(await journal.CheckSealsAsync(build.Id, [], null)).Standing);
    }

    [Fact]
    public async Task A_record_admitted_twice_is_there_once()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        await using var journal = await OpenAsync(TimeProvider.System);
        var record = await source.TakeOutAsync(build.Id);
        await journal.AdmitAsync(record);

        Assert.Equal(new Admitted(build, 3, 0, record.LastHash), await journal.AdmitAsync(record));
        Assert.Equal(3, (await journal.ReadAsync(build.Id)).Count);
    }

    [Fact]
    public async Task A_record_that_went_on_elsewhere_adds_only_what_is_new()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        await using var journal = await OpenAsync(TimeProvider.System);
        await journal.AdmitAsync(await source.TakeOutAsync(build.Id));
        var later = await source.AppendAsync(build.Id, Drafts.Note("later"));

        Assert.Equal(new Admitted(build, 3, 1, later.Hash), await journal.AdmitAsync(await source.TakeOutAsync(build.Id)));
        Assert.Equal(later, (await journal.ReadAsync(build.Id))[^1]);
        Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id));
    }

    [Fact]
    public async Task Two_records_of_one_build_that_part_are_not_mixed_and_the_place_is_named()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        await using var journal = await OpenAsync(new SteppingClock());
        await journal.AdmitAsync(await source.TakeOutAsync(build.Id));
        await source.AppendAsync(build.Id, Drafts.Note("there"));
        await journal.AppendAsync(build.Id, Drafts.Note("here"));

        var refusal = await Assert.ThrowsAsync<RecordRefusedException>(async () => await journal.AdmitAsync(await source.TakeOutAsync(build.Id)));

        Assert.StartsWith("From entry 4 on, this journal has another record of the build.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(new NoteWritten("here"), (await journal.ReadAsync(build.Id))[^1].Content);
    }

    [Fact]
    public async Task A_record_whose_serial_number_is_taken_or_whose_keys_are_used_is_refused_whole()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "001");
        await using var journal = await OpenAsync(new SteppingClock());
        await journal.StartBuildAsync(Drafts.Build("001"));
        await Assert.ThrowsAsync<SerialTakenException>(async () => await journal.AdmitAsync(await source.TakeOutAsync(build.Id)));

        var other = await source.StartBuildAsync(Drafts.Build("002"));
        var draft = Drafts.Note("used");
        await source.AppendAsync(other.Id, Drafts.Note("first"));
        await source.AppendAsync(other.Id, draft);
        var mine = await journal.StartBuildAsync(Drafts.Build("003"));
        await journal.AppendAsync(mine.Id, draft);

        await Assert.ThrowsAsync<KeyReusedException>(async () => await journal.AdmitAsync(await source.TakeOutAsync(other.Id)));
        Assert.Null(await journal.FindBuildAsync(other.Id));
    }

    [Fact]
    public async Task An_altered_record_is_refused_with_the_place_named()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        await using var journal = await OpenAsync(new SteppingClock());
        var record = await source.TakeOutAsync(build.Id);
        var altered = record.StoredEntries.Select(entry => entry.Sequence == 2 ? entry with { Person = "Bo Example"u8.ToArray() } : entry);

        var refusal = await Assert.ThrowsAsync<RecordRefusedException>(
            () => journal.AdmitAsync(new BuildRecord(record.Stored, [.. altered], record.Seals, record.Files)));

        Assert.Contains("Entry 2 does not give its own hash", refusal.Message, StringComparison.Ordinal);
        Assert.Empty(await journal.ListBuildsAsync());
    }

    [Fact]
    public async Task A_record_without_one_of_its_photographs_is_refused()
    {
        await using var source = Elsewhere();
        var build = await WriteAsync(source, "one");
        await using var journal = await OpenAsync(new SteppingClock());
        var record = await source.TakeOutAsync(build.Id);

        await Assert.ThrowsAsync<DraftRefusedException>(
            () => journal.AdmitAsync(new BuildRecord(record.Stored, record.StoredEntries, record.Seals, new Dictionary<string, byte[]>())));
        Assert.Empty(await journal.ListBuildsAsync());
    }

    [Fact]
    public async Task A_store_that_is_sound_finds_nothing_wrong_with_itself()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));

        Assert.Empty(await journal.InspectAsync());
    }

    private static StoreJournal Elsewhere() => new(new MemoryStore(new MemoryStore.Shelf()), new SteppingClock());

    private static async Task<Build> WriteAsync(IJournal journal, string serial)
    {
        var build = await journal.StartBuildAsync(Drafts.Build(serial));
        await journal.AppendAsync(build.Id, Drafts.Of(new ReadingEntered(Drafts.Reading("105,8 Ω", 105.8))));
        await journal.AppendAsync(build.Id, Drafts.Of(new ReadingCorrected(1, Drafts.Reading("105.9", 105.9))));
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        return build;
    }
}
