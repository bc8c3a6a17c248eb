namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task Entries_of_every_kind_come_back_as_they_were_recorded_after_reopening()
    {
        var (journal, build) = await StartAsync();
        var recorded = new List<Entry>();
        await using (journal)
        {
            foreach (var content in Drafts.EveryKind)
                recorded.Add(await journal.AppendAsync(
                    build.Id, content is PhotoAttached ? Drafts.Photo(1, 2, 3) : Drafts.Of(content)));
        }

        await using var again = await OpenAsync(TimeProvider.System);
        var read = await again.ReadAsync(build.Id);

        Assert.Equal(recorded, read);
        Assert.Equal(Drafts.EveryKind, read.Select(entry => entry.Content));
        Assert.Equal(Enumerable.Range(1, Drafts.EveryKind.Count), read.Select(entry => entry.Sequence));
        Assert.All(read, entry => Assert.Equal(SteppingClock.Start.AddSeconds(entry.Sequence), entry.Recorded));
        Assert.All(read.Zip(read.Skip(1)), pair => Assert.Equal(pair.First.Hash, pair.Second.PreviousHash));
    }

    [Fact]
    public async Task Reading_after_a_sequence_gives_only_what_follows()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        foreach (var text in new[] { "one", "two", "three" })
            await journal.AppendAsync(build.Id, Drafts.Note(text));

        Assert.Equal([new NoteWritten("three")], (await journal.ReadAsync(build.Id, 2)).Select(entry => entry.Content));
        Assert.Empty(await journal.ReadAsync(build.Id, 3));
    }

    [Fact]
    public async Task Appending_the_same_draft_again_records_nothing_and_returns_the_entry()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var draft = Drafts.Of(new ReadingEntered(Drafts.Reading("105,8 Ω", 105.8)));

        var first = await journal.AppendAsync(build.Id, draft);
        await journal.AppendAsync(build.Id, Drafts.Note("in between"));
        var again = await journal.AppendAsync(build.Id, draft);

        Assert.Equal(first, again);
        Assert.Equal(2, (await journal.ReadAsync(build.Id)).Count);
    }

    [Fact]
    public async Task The_same_draft_sent_by_many_at_once_is_recorded_once()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await using var other = await OpenAsync(new SteppingClock());
        var draft = Drafts.Note("pressed twice");

        var entries = await Task.WhenAll(Enumerable.Range(0, 16).Select(turn => (turn % 2 == 0 ? journal : other).AppendAsync(build.Id, draft)));

        Assert.Single(entries.Distinct());
        Assert.Single(await journal.ReadAsync(build.Id));
    }

    [Fact]
    public async Task Something_else_under_the_same_key_is_refused()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var other = await journal.StartBuildAsync(Drafts.Build("002"));
        var draft = Drafts.Note("as it was");
        await journal.AppendAsync(build.Id, draft);

        await Assert.ThrowsAsync<KeyReusedException>(() => journal.AppendAsync(build.Id, draft with { Content = new NoteWritten("as it is") }));
        await Assert.ThrowsAsync<KeyReusedException>(() => journal.AppendAsync(build.Id, draft with { Person = "Bo Example" }));
        await Assert.ThrowsAsync<KeyReusedException>(() => journal.AppendAsync(build.Id, draft with { Instrument = "" }));
        var refusal = await Assert.ThrowsAsync<KeyReusedException>(() => journal.AppendAsync(other.Id, draft));

        Assert.Equal(draft.Key, refusal.Key);
        Assert.Single(await journal.ReadAsync(build.Id));
        Assert.Empty(await journal.ReadAsync(other.Id));
    }

    [Fact]
    public async Task A_corrected_reading_is_a_new_entry_and_the_old_one_stays()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var wrong = await journal.AppendAsync(build.Id, Drafts.Of(new ReadingEntered(Drafts.Reading("1058", 1058))));

        var right = await journal.AppendAsync(build.Id, Drafts.Of(new ReadingCorrected(wrong.Sequence, Drafts.Reading("105.8", 105.8))));
        var better = await journal.AppendAsync(build.Id, Drafts.Of(new ReadingCorrected(right.Sequence, Drafts.Reading("105.9", 105.9))));

        Assert.Equal([wrong, right, better], await journal.ReadAsync(build.Id));
    }

    [Fact]
    public async Task A_correction_must_refer_to_a_reading_of_the_same_check()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        await journal.AppendAsync(build.Id, Drafts.Of(new ReadingEntered(Drafts.Reading("105.8", 105.8))));
        await journal.AppendAsync(build.Id, Drafts.Note("no reading"));
        var reading = Drafts.Reading("1", 1);

        foreach (var correction in new ReadingCorrected[]
        {
            new(2, reading), new(3, reading), new(0, reading), new(1, reading with { CheckId = "X1-bonding" }),
        })
        {
            var refusal = await Assert.ThrowsAsync<CorrectionRefusedException>(() => journal.AppendAsync(build.Id, Drafts.Of(correction)));
            Assert.Equal(correction.Corrects, refusal.Corrects);
        }
        Assert.Equal(2, (await journal.ReadAsync(build.Id)).Count);
    }

    [Fact]
    public async Task A_correction_cannot_refer_to_a_reading_of_another_build()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var other = await journal.StartBuildAsync(Drafts.Build("002"));
        await journal.AppendAsync(other.Id, Drafts.Of(new ReadingEntered(Drafts.Reading("105.8", 105.8))));

        await Assert.ThrowsAsync<CorrectionRefusedException>(
            () => journal.AppendAsync(build.Id, Drafts.Of(new ReadingCorrected(1, Drafts.Reading("1", 1)))));
    }

    [Fact]
    public async Task A_draft_that_cannot_be_recorded_as_it_is_leaves_no_entry()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var note = Drafts.Note("sound");

        foreach (var draft in new[]
        {
            note with { Key = Guid.Empty },
            note with { Person = " " },
            note with { Person = "A\0da" },
            note with { Instrument = "\udc00" },
            note with { Content = new NoteWritten("half a pair: \ud83d") },
            note with { FileBytes = new byte[] { 1 } },
            note with { Content = new ReadingEntered(Drafts.Reading("1", double.NaN)) },
            note with { Content = new ReadingEntered(Drafts.Reading("1", 1) with { CheckId = "" }) },
            note with { Content = new ReadingCorrected(1, Drafts.Reading("1", double.PositiveInfinity)) },
            note with { Content = new ReadingEntered(Drafts.Reading("1", 1) with { OverRange = true }) },
            note with { Content = new CheckSkipped("E1-element", " ") },
            note with { Content = new CheckSkipped("", "no time") },
            note with { Content = new Deviation("W7", "") },
            note with { Content = new SignedOff("", "builder", "All dead tests were made.") },
            note with { Content = new SignedOff("Ada Example", "builder", "") },
            note with { Content = new PlanFixed("dead tests", "ABC", []) },
        })
            await Assert.ThrowsAsync<DraftRefusedException>(() => journal.AppendAsync(build.Id, draft));
        Assert.Empty(await journal.ReadAsync(build.Id));
    }

    [Fact]
    public async Task An_append_cancelled_before_it_begins_records_nothing()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => journal.AppendAsync(build.Id, Drafts.Note("too late"), new CancellationToken(canceled: true)));

        Assert.Empty(await journal.ReadAsync(build.Id));
    }
}
