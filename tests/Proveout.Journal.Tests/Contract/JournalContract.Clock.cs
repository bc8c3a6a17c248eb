namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_clock_that_is_set_back_changes_no_order_and_its_time_is_kept_as_claimed_and_flagged()
    {
        var clock = new SettableClock(new DateTimeOffset(2031, 3, 14, 9, 0, 0, TimeSpan.Zero));
        await using var journal = await OpenAsync(clock);
        var build = await journal.StartBuildAsync(Drafts.Build());
        foreach (var (text, hour) in new[] { ("one", 10), ("two", 11), ("three", 3), ("four", 4), ("five", 12), ("six", 11) })
        {
            clock.Now = new DateTimeOffset(2031, 3, 14, hour, 0, 0, TimeSpan.Zero);
            await journal.AppendAsync(build.Id, Drafts.Note(text));
        }

        var entries = await journal.ReadAsync(build.Id);

        Assert.Equal(["one", "two", "three", "four", "five", "six"], entries.Select(entry => ((NoteWritten)entry.Content).Text));
        Assert.Equal([10, 11, 3, 4, 12, 11], entries.Select(entry => entry.Recorded.Hour));
        Assert.Equal([(3, 3, 11), (6, 11, 12)], ClockJump.In(build, entries).Select(jump => (jump.Sequence, jump.Claimed.Hour, jump.Before.Hour)));
        Assert.IsType<ChainWhole>(await journal.VerifyAsync(build.Id));
    }

    [Fact]
    public async Task A_clock_that_only_goes_on_is_not_flagged()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Note("one"));
        await journal.AppendAsync(build.Id, Drafts.Note("two"));

        Assert.Empty(ClockJump.In(build, await journal.ReadAsync(build.Id)));
    }

    private sealed class SettableClock(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
