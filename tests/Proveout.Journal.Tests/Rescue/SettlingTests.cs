using Proveout.Journal.Chain;
using Proveout.Journal.Rescue;

namespace Proveout.Journal.Tests.Rescue;

/// <summary>Which of two entries of one number was recorded, when pages of a killed writer stayed behind.</summary>
public sealed class SettlingTests
{
    private static readonly StoredBuild Record = StoredBuild.From(Drafts.Build(), SteppingClock.Start);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_one_that_the_next_refers_to_was_recorded(bool isFirst)
    {
        var one = Next("recorded", 0, Record.Hash);
        var other = Next("never recorded", 0, Record.Hash);
        var next = Next("next", 1, one.Hash);

        var build = Salvaged(isFirst ? [one, other, next] : [other, one, next]);

        Assert.Equal([one, next], build.Entries.Values);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_two_at_the_end_the_one_that_the_recorded_end_names_was_recorded(bool isFirst)
    {
        var one = Next("recorded", 0, Record.Hash);
        var other = Next("never recorded", 0, Record.Hash);

        var build = Salvaged(isFirst ? [one, other] : [other, one], new StoredEnd(1, one.Hash));

        Assert.Equal([one], build.Entries.Values);
    }

    [Fact]
    public void An_end_whose_number_was_damaged_is_not_believed_and_earlier_ends_are_passed_over()
    {
        var one = Next("one", 0, Record.Hash);
        var two = Next("two", 1, one.Hash);

        var build = Salvaged([one, two], new StoredEnd(0, Record.Hash), new StoredEnd(1, one.Hash), new StoredEnd(2, two.Hash), new StoredEnd(16_386, two.Hash));

        Assert.Equal(new StoredEnd(2, two.Hash), build.End);
        Assert.Empty(build.Missing);
    }

    [Fact]
    public void An_end_beyond_what_was_found_tells_how_much_is_lost()
    {
        var one = Next("one", 0, Record.Hash);
        var lost = Next("four", 3, Record.MachineFingerprint);

        var build = Salvaged([one], new StoredEnd(1, one.Hash), new StoredEnd(4, lost.Hash));

        Assert.Equal([2, 3, 4], build.Missing);
    }

    private static SalvagedBuild Salvaged(IReadOnlyList<StoredEntry> entries, params IReadOnlyList<StoredEnd> ends)
    {
        var build = new SalvagedBuild(FieldText.Read(Record.Id)) { Record = Record };
        foreach (var entry in entries)
            build.Add(entry);
        foreach (var end in ends)
            build.Add(end);
        build.Settle();
        return build;
    }

    private static StoredEntry Next(string text, long before, byte[] hash) => StoredEntry.From(
        Guid.Parse(FieldText.Read(Record.Id)), Drafts.Note(text), SteppingClock.Start, new StoredEnd(before, hash));
}
