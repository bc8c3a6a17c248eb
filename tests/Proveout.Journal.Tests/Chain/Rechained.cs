using Proveout.Journal.Chain;

namespace Proveout.Journal.Tests.Chain;

/// <summary>Entries as a forger with the source code would make them.</summary>
internal static class Rechained
{
    /// <summary>An entry at the end of a record, sound in its hashes, that went past the journal.</summary>
    public static StoredEntry After(BuildRecord record, EntryDraft draft) => StoredEntry.From(
        record.Build.Id, draft, SteppingClock.Start, new StoredEnd(record.Entries, FieldText.Write(record.LastHash)));
}
