namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_measurement_comes_back_with_its_data_file_byte_for_byte()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var entry = await journal.AppendAsync(build.Id, Drafts.Measurement(7, 8, 9));

        var file = await journal.ReadDataFileAsync(build.Id, Fingerprint.OfBytes([7, 8, 9]));

        Assert.Equal([7, 8, 9], file!.Bytes.ToArray());
        Assert.Equal(entry.Content, file.About);
        Assert.Equal(entry.Content, (await journal.ReadAsync(build.Id))[0].Content);
        Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id));
    }

    [Fact]
    public async Task A_data_file_is_no_photograph_and_a_photograph_no_data_file()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Measurement(7, 8, 9));
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));

        Assert.Null(await journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes([7, 8, 9])));
        Assert.Null(await journal.ReadDataFileAsync(build.Id, Fingerprint.OfBytes([1, 2, 3])));
        Assert.Null(await journal.ReadDataFileAsync(build.Id, ""));
    }

    [Fact]
    public async Task A_measurement_that_was_typed_needs_no_data_file()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;

        var taken = Assert.IsType<MeasurementTaken>((await journal.AppendAsync(build.Id, Drafts.Measurement())).Content);

        Assert.Equal(("", "", 0L), (taken.FileName, taken.Sha256, taken.Length));
    }

    [Fact]
    public async Task A_measurement_that_is_not_whole_is_refused()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var sound = Drafts.Measurement(1, 2, 3);
        var taken = (MeasurementTaken)sound.Content;

        foreach (var draft in new[]
        {
            sound with { FileBytes = new byte[] { 1, 2, 4 } },
            sound with { FileBytes = ReadOnlyMemory<byte>.Empty },
            sound with { Content = taken with { Length = 4 } },
            sound with { Content = taken with { Sha256 = "", Length = 0 } },
            sound with { Content = taken with { Analysis = " " } },
            sound with { Content = taken with { InputsJson = "{" } },
            sound with { Content = taken with { Results = [new("Skew", double.NaN, 0, "mm")] } },
            sound with { Content = taken with { Results = [new("Skew", 1, -1, "mm")] } },
        })
            await Assert.ThrowsAsync<DraftRefusedException>(() => journal.AppendAsync(build.Id, draft));
        Assert.Empty(await journal.ReadAsync(build.Id));
    }
}
