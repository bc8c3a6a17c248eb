using System.Text.Json;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Store;

/// <summary>Takes the record of a build in from elsewhere: only whole, only what this journal would have recorded itself, and each entry once.</summary>
internal static class Admission
{
    /// <summary>What can be asked of the record without looking at the journal.</summary>
    public static void Require(BuildRecord record)
    {
        var build = DecodeOrRefuse(record.Stored.Decode);
        DraftRules.Require(new BuildDraft(build.Id, build.Serial, build.MachineName, build.MachineFingerprint, build.Builder));
        foreach (var stored in record.StoredEntries)
        {
            var entry = DecodeOrRefuse(stored.Decode);
            if (entry.BuildId != build.Id)
                throw new RecordRefusedException($"Entry {entry.Sequence} belongs to another build ({entry.BuildId}). Nothing was taken in.");
            var kept = KeptFile.Of(entry.Content);
            DraftRules.Require(new EntryDraft(entry.Key, entry.Person, entry.Instrument, entry.Content)
            {
                FileBytes = kept is null ? default(ReadOnlyMemory<byte>) : record.Files.GetValueOrDefault(kept.Sha256),
            });
        }
        if (record.Verify() is ChainBroken broken)
            throw new RecordRefusedException($"The record is not as it was written. {broken.Sentence} Nothing was taken in.");
        foreach (var seal in record.Seals)
            if (SealCheck.StandingOf(seal, build.Id, record.Hashes, seal.PublicKey) is var standing and not SealStanding.Holds)
                throw new RecordRefusedException($"A seal of the record does not hold ({SealCheck.Sentence(seal, standing, record.Entries)}) Nothing was taken in.");
    }

    public static Admitted Run(IJournalRows rows, BuildRecord record)
    {
        var build = record.Build;
        if (rows.FindBuild(build.Id) is { } there)
            RequireSame(there, record.Stored);
        else if (rows.FindBuild(build.MachineName, build.Serial)?.Decode() is { } holder)
            throw new SerialTakenException(holder);
        else
            rows.Add(record.Stored);
        // The end first: from here on nobody else moves it, so that what is read as the end below is still the end when the rest is added.
        _ = rows.FindEnd(build.Id);
        var wereThere = RequireCommonStart(rows.Entries(build.Id, after: 0), record.StoredEntries);
        foreach (var entry in record.StoredEntries.Skip(wereThere))
            Add(rows, build.Id, entry, record);
        foreach (var seal in record.Seals)
            rows.Add(seal);
        return new Admitted(build, wereThere, Math.Max(0, record.Entries - wereThere), record.LastHash);
    }

    private static void Add(IJournalRows rows, Guid build, StoredEntry stored, BuildRecord record)
    {
        var entry = stored.Decode();
        if (rows.FindEntry(entry.Key) is { } holder)
            throw new KeyReusedException(entry.Key, $"entry {holder.Sequence} of build {FieldText.Read(holder.BuildId)}");
        if (entry.Content is ReadingCorrected correction)
            Appending.RequireReading(rows, build, correction);
        if (KeptFile.Of(entry.Content) is { } file)
            rows.Keep(file.Sha256, record.Files[file.Sha256]);
        rows.Add(stored);
    }

    private static void RequireSame(StoredBuild there, StoredBuild brought)
    {
        if (!there.Hash.AsSpan().SequenceEqual(brought.Hash))
            throw new RecordRefusedException(
                $"This journal has a build {FieldText.Read(there.Id)} already, with other particulars (serial number {FieldText.Read(there.Serial)}). Nothing was taken in.");
    }

    /// <returns>How many of the entries brought are there already.</returns>
    private static int RequireCommonStart(IEnumerable<StoredEntry> there, IReadOnlyList<StoredEntry> brought)
    {
        var common = 0;
        foreach (var (mine, theirs) in there.Zip(brought))
        {
            if (mine.Sequence != theirs.Sequence || !mine.Hash.AsSpan().SequenceEqual(theirs.Hash))
                throw new RecordRefusedException(
                    $"From entry {theirs.Sequence} on, this journal has another record of the build. Nothing was taken in; "
                    + "compare the two, and import into a journal of its own to keep both.");
            common++;
        }
        return common;
    }

    private static T DecodeOrRefuse<T>(Func<T> decode)
    {
        try
        {
            return decode();
        }
        catch (JournalDamagedException cause)
        {
            var newer = cause.InnerException is JsonException or NotSupportedException ? " It may come from a newer Proveout." : "";
            throw new RecordRefusedException($"{cause.Message}{newer} Nothing was taken in.");
        }
    }
}
