namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_photograph_comes_back_byte_for_byte()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var bytes = new byte[300_000];
        new Random(7).NextBytes(bytes);
        var entry = await journal.AppendAsync(build.Id, Drafts.Photo(bytes));

        var photo = await journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes(bytes));

        Assert.Equal(bytes, photo!.Bytes.ToArray());
        Assert.Equal(entry.Content, photo.About);
    }

    [Fact]
    public async Task The_same_photograph_may_be_attached_more_than_once()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));

        Assert.Equal([1, 2, 3], (await journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes([1, 2, 3])))!.Bytes.ToArray());
        Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id));
    }

    [Fact]
    public async Task A_photograph_belongs_to_the_build_that_attached_it()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var other = await journal.StartBuildAsync(Drafts.Build("002"));
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        await journal.AppendAsync(other.Id, Drafts.Note(Fingerprint.OfBytes([1, 2, 3])));

        Assert.Null(await journal.ReadPhotoAsync(other.Id, Fingerprint.OfBytes([1, 2, 3])));
        Assert.Null(await journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes([3, 2, 1])));
        Assert.Null(await journal.ReadPhotoAsync(Guid.NewGuid(), Fingerprint.OfBytes([1, 2, 3])));
    }

    [Fact]
    public async Task A_photograph_that_did_not_arrive_whole_or_is_no_picture_is_refused()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var sound = Drafts.Photo(1, 2, 3);
        var about = (PhotoAttached)sound.Content;

        foreach (var draft in new[]
        {
            sound with { FileBytes = new byte[] { 1, 2, 4 } },
            sound with { FileBytes = ReadOnlyMemory<byte>.Empty },
            sound with { Content = about with { Length = 4 } },
            sound with { Content = about with { ContentType = "text/html" } },
            sound with { Content = about with { ContentType = "image/svg+xml" } },
        })
            await Assert.ThrowsAsync<DraftRefusedException>(() => journal.AppendAsync(build.Id, draft));
        Assert.Empty(await journal.ReadAsync(build.Id));
    }
}
