namespace Proveout.Journal.Chain;

/// <summary>How far a record goes: kept apart from the entries, so that one taken off at the end is missed.</summary>
internal sealed record StoredEnd(long Entries, byte[] Hash);
