namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task An_untouched_record_is_whole_and_gives_its_last_hash()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Note("first"));
        var last = await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));

        Assert.Equal(new ChainWhole(2, last.Hash), await journal.VerifyAsync(build.Id));
    }

    [Fact]
    public async Task A_build_without_entries_is_whole_and_its_hash_is_what_the_first_entry_refers_to()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;

        var empty = Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id));
        var first = await journal.AppendAsync(build.Id, Drafts.Note("first"));

        Assert.Equal(new ChainWhole(0, first.PreviousHash), empty);
    }

    [Fact]
    public async Task Many_writers_at_once_lose_and_double_nothing_and_leave_the_record_whole()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await using var other = await OpenAsync(new SteppingClock());

        var entries = await Task.WhenAll(Enumerable.Range(0, 40).Select(
            number => (number % 2 == 0 ? journal : other).AppendAsync(build.Id, Drafts.Note($"{number}"))));

        Assert.Equal(Enumerable.Range(1, 40), entries.Select(entry => entry.Sequence).Order());
        Assert.Equal(entries.OrderBy(entry => entry.Sequence), await journal.ReadAsync(build.Id));
        Assert.Equal(40, Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id)).Entries);
    }
}
