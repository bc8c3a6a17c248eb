namespace Proveout.Journal.Chain;

/// <summary>Tells from the hashes what was done where a chain breaks: which number an entry had, and what it stood behind.</summary>
/// <param name="build">The build's own record.</param>
/// <param name="entries">All entries, as they stand.</param>
internal sealed class BreakKind(StoredBuild build, IReadOnlyList<StoredEntry> entries)
{
    private const long MostTried = 100_000;

    /// <summary>What was done at the entry in the given place (counted from 1), where the chain is whole before it.</summary>
    public ChainBroken At(int place, ChainPart part)
    {
        var entry = entries[place - 1];
        var before = place == 1 ? build.Hash : entries[place - 2].Hash;
        if (OriginalNumber(entry, place) is not { } number)
            return part == ChainPart.Order ? Gone(place, part, entry) : Altered(place, part);
        if (Same(entry.PreviousHash, before))
            return Renumbered(place, part, entry, number);
        if (PlaceOf(entry.PreviousHash) is not { } behind)
            return Gone(place, part, entry);
        return behind < place ? Inserted(behind + 1, place, part) : Reordered(place, part, number);
    }

    private static ChainBroken Altered(int place, ChainPart part) => new(
        place, part,
        part == ChainPart.Link
            ? $"Entry {place} does not refer to the hash of what stands before it, and does not give its own hash: it was changed after it was recorded."
            : $"Entry {place} does not give its own hash: its time, person, instrument, key, content or hash was changed after it was recorded.");

    private static ChainBroken Renumbered(int place, ChainPart part, StoredEntry entry, long number) => new(
        place, part,
        number == entry.Sequence
            ? $"Entry {place} is missing: entry {entry.Sequence} stands in its place, and was written to follow what is there."
            : $"The entry that stands as {entry.Sequence} was recorded as entry {number}: its number was changed.");

    private static ChainBroken Gone(int place, ChainPart part, StoredEntry entry) => new(
        place, part,
        part == ChainPart.Order
            ? $"Entry {place} is missing: entry {entry.Sequence} stands in its place."
            : $"What was recorded before entry {place} is not there: it does not refer to the hash of what stands before it.")
    {
        How = Tampering.Removed,
    };

    private static ChainBroken Inserted(int first, int place, ChainPart part) => new(
        first, part,
        place - first == 1
            ? $"Entry {first} was put in afterwards: the entry behind it refers past it."
            : $"Entries {first} to {place - 1} were put in afterwards: the entry behind them refers past them.")
    {
        How = Tampering.Inserted,
    };

    private static ChainBroken Reordered(int place, ChainPart part, long number) => new(
        place, part, $"The entries stand in another order: the one in place {place} was recorded as entry {number}.")
    { How = Tampering.Reordered };

    /// <summary>The sequence under which the fields give the hash; null when none does, so that a field or the hash was changed.</summary>
    private long? OriginalNumber(StoredEntry entry, int place)
    {
        var last = Math.Max(entries[^1].Sequence, entries.Count);
        foreach (var number in (IEnumerable<long>)[entry.Sequence, place, .. Range(1, Math.Min(last + entries.Count, MostTried))])
            if (Same((entry with { Sequence = number }).ComputeHash(), entry.Hash))
                return number;
        return null;
    }

    private static IEnumerable<long> Range(long first, long last)
    {
        for (var number = first; number <= last; number++)
            yield return number;
    }

    /// <summary>The place (0 for the build's own record) of what has a hash; null when nothing has.</summary>
    private int? PlaceOf(byte[] hash)
    {
        if (Same(build.Hash, hash))
            return 0;
        for (var index = 0; index < entries.Count; index++)
            if (Same(entries[index].Hash, hash))
                return index + 1;
        return null;
    }

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
