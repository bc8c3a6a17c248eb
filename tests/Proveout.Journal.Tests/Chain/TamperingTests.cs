using Proveout.Journal.Chain;

namespace Proveout.Journal.Tests.Chain;

/// <summary>What the check of a chain says about each way of going at a record, with and without making up for it elsewhere in the rows.</summary>
public sealed class TamperingTests
{
    private static readonly StoredBuild Build = StoredBuild.From(Drafts.Build(), SteppingClock.Start);

    [Fact]
    public void An_entry_that_was_altered_is_named()
    {
        var entries = Record(6);
        entries[2] = entries[2] with { Person = "Bo Example"u8.ToArray() };

        Expect(3, Tampering.Altered, "Entry 3 does not give its own hash", Check(entries, 6));
    }

    [Fact]
    public void An_entry_that_was_altered_with_its_hash_computed_anew_is_found_by_the_next()
    {
        var entries = Record(6);
        entries[2] = Sealed(entries[2] with { Person = "Bo Example"u8.ToArray() });

        Expect(4, Tampering.Removed, "What was recorded before entry 4 is not there", Check(entries, 6));
    }

    [Fact]
    public void An_entry_that_was_removed_is_missed_whether_the_others_were_numbered_anew_or_not()
    {
        var entries = Record(6);
        entries.RemoveAt(2);
        Expect(3, Tampering.Removed, "Entry 3 is missing", Check(entries, 6));

        Expect(3, Tampering.Removed, "What was recorded before entry 3 is not there", Check(Numbered(entries), 5));
    }

    [Fact]
    public void Entries_that_were_put_in_are_named_though_they_are_sound_in_themselves()
    {
        var entries = Record(6);
        var first = Next(entries[2], 3, "put in");
        entries.InsertRange(3, [first, Next(first, 4, "and another")]);

        Expect(4, Tampering.Inserted, "Entries 4 to 5 were put in afterwards", Check(Numbered(entries, keep: 5), 8));
    }

    [Fact]
    public void Entries_that_stand_in_another_order_are_named()
    {
        var entries = Record(6);
        (entries[2], entries[3]) = (entries[3], entries[2]);

        Expect(3, Tampering.Reordered, "the one in place 3 was recorded as entry 4", Check(Numbered(entries), 6));
    }

    [Fact]
    public void A_tail_that_was_cut_off_is_missed_by_the_recorded_end_and_without_it_by_a_seal()
    {
        var entries = Record(6);
        using var key = SealKey.Make();
        var seal = key.Sign(Guid.Parse(FieldText.Read(Build.Id)), 6, FieldText.Read(entries[5].Hash), SteppingClock.Start, "Ada Example");
        entries.RemoveRange(4, 2);

        Expect(5, Tampering.CutOff, "6 entries were recorded, but 4 are there.", Check(entries, 6));
        Assert.IsType<ChainWhole>(Check(entries, 4));
        var verdict = Assert.Single(SealCheck.Run([seal], seal.BuildId, Hashes(entries), key.PublicKey));
        Assert.Equal(SealStanding.CutOff, verdict.Standing);
        Assert.Contains("only 4 entries are there", verdict.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_written_anew_from_the_change_on_is_whole_and_only_a_seal_tells()
    {
        var entries = Record(6);
        using var key = SealKey.Make();
        var seal = key.Sign(Guid.Parse(FieldText.Read(Build.Id)), 6, FieldText.Read(entries[5].Hash), SteppingClock.Start, "Ada Example");
        entries[2] = Sealed(entries[2] with { Person = "Bo Example"u8.ToArray() });
        for (var index = 3; index < 6; index++)
            entries[index] = Sealed(entries[index] with { PreviousHash = entries[index - 1].Hash });

        Assert.IsType<ChainWhole>(Check(entries, 6));
        Assert.Equal(SealStanding.Rewritten, Assert.Single(SealCheck.Run([seal], seal.BuildId, Hashes(entries), key.PublicKey)).Standing);
    }

    private static void Expect(long sequence, Tampering how, string words, ChainVerdict verdict)
    {
        var broken = Assert.IsType<ChainBroken>(verdict);
        Assert.Contains(words, broken.Sentence, StringComparison.Ordinal);
        Assert.Equal((sequence, how), (broken.Sequence, broken.How));
    }

    private static ChainVerdict Check(List<StoredEntry> entries, long recorded)
    {
        var whole = Record(6);
        var end = recorded == 6 ? new StoredEnd(6, whole[5].Hash) : new StoredEnd(recorded, entries[^1].Hash);
        return ChainCheck.Run(Build, entries, end with { Hash = recorded == 6 && entries.Count == 6 ? entries[^1].Hash : end.Hash }, _ => null);
    }

    private static List<StoredEntry> Record(int count)
    {
        var entries = new List<StoredEntry>();
        var end = new StoredEnd(0, Build.Hash);
        for (var number = 1; number <= count; number++)
        {
            var draft = new EntryDraft(new Guid(number, 0, 0, new byte[8]), "Ada Example", "", new NoteWritten(FormattableString.Invariant($"{number}")));
            entries.Add(StoredEntry.From(Guid.Parse(FieldText.Read(Build.Id)), draft, SteppingClock.Start, end));
            end = new StoredEnd(number, entries[^1].Hash);
        }
        return entries;
    }

    private static StoredEntry Next(StoredEntry before, long number, string text) => StoredEntry.From(
        Guid.Parse(FieldText.Read(Build.Id)), Drafts.Note(text), SteppingClock.Start, new StoredEnd(number, before.Hash));

    private static StoredEntry Sealed(StoredEntry entry) => entry with { Hash = entry.ComputeHash() };

    // As somebody would who changes the numbers and no hash.
    private static List<StoredEntry> Numbered(List<StoredEntry> entries, int keep = 0) =>
        [.. entries.Select((entry, index) => index < keep ? entry : entry with { Sequence = index + 1 })];

    private static string[] Hashes(List<StoredEntry> entries) => [FieldText.Read(Build.Hash), .. entries.Select(entry => FieldText.Read(entry.ComputeHash()))];
}
