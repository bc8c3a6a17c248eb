namespace Proveout.Journal.Chain;

/// <summary>Recomputes a chain from what is stored and names the first place where it does not hold.</summary>
internal static class ChainCheck
{
    /// <param name="build">The build's own record, null when it is missing.</param>
    /// <param name="entries">All entries stored under the build, by ascending sequence.</param>
    /// <param name="end">The recorded end, null when it is missing.</param>
    /// <param name="file">Finds the bytes of a photograph or data file by fingerprint; null when they are missing.</param>
    public static ChainVerdict Run(StoredBuild? build, IEnumerable<StoredEntry> entries, StoredEnd? end, Func<string, byte[]?> file)
    {
        if (build is null)
            return new ChainBroken(0, ChainPart.BuildRecord, "The record of the build itself is missing, though entries of it are there.") { How = Tampering.Removed };
        if (!Same(build.ComputeHash(), build.Hash))
            return new ChainBroken(0, ChainPart.BuildRecord,
                "The record of the build itself (serial number, machine, builder, start or hash) was changed after it was written.");
        var stored = entries.ToList();
        var reached = new StoredEnd(0, build.Hash);
        foreach (var entry in stored)
        {
            if (PartAt(entry, reached) is { } part)
                return new BreakKind(build, stored).At((int)reached.Entries + 1, part);
            if (FileBreak(entry, file) is { } broken)
                return broken;
            reached = new StoredEnd(entry.Sequence, entry.Hash);
        }
        if (BreakAtEnd(reached, end) is { } brokenEnd)
            return brokenEnd;
        return new ChainWhole((int)reached.Entries, FieldText.Read(reached.Hash));
    }

    private static ChainPart? PartAt(StoredEntry entry, StoredEnd before) =>
        entry.Sequence != before.Entries + 1 ? ChainPart.Order
        : !Same(entry.PreviousHash, before.Hash) ? ChainPart.Link
        : !Same(entry.ComputeHash(), entry.Hash) ? ChainPart.Entry
        : null;

    private static ChainBroken? FileBreak(StoredEntry entry, Func<string, byte[]?> file)
    {
        if (KeptFile.Of(entry.Decode().Content) is not { } kept)
            return null;
        var bytes = file(kept.Sha256);
        var sentence = bytes switch
        {
            null => $"The {kept.Word} {kept.FileName} of entry {entry.Sequence} is missing.",
            _ when Fingerprint.OfBytes(bytes) != kept.Sha256 =>
                $"The {kept.Word} {kept.FileName} of entry {entry.Sequence} is not the one that was attached.",
            _ => null,
        };
        return sentence is null ? null : new ChainBroken(entry.Sequence, ChainPart.Photo, sentence)
        {
            How = bytes is null ? Tampering.Removed : Tampering.Altered,
        };
    }

    private static ChainBroken? BreakAtEnd(StoredEnd reached, StoredEnd? end)
    {
        if (end is null)
            return new ChainBroken(reached.Entries, ChainPart.End, "How many entries the build has is no longer recorded.") { How = Tampering.Removed };
        if (end.Entries != reached.Entries)
            return new ChainBroken(Math.Min(end.Entries, reached.Entries) + 1, ChainPart.End,
                $"{end.Entries} entries were recorded, but {reached.Entries} are there.")
            {
                How = end.Entries > reached.Entries ? Tampering.CutOff : Tampering.Inserted,
            };
        return Same(end.Hash, reached.Hash)
            ? null
            : new ChainBroken(reached.Entries, ChainPart.End, $"The hash recorded for the end is not that of entry {reached.Entries}.");
    }

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
