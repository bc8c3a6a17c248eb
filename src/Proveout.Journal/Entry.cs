namespace Proveout.Journal;

/// <summary>One line of a build's record. Once written it stays; what turned out wrong is corrected by a later entry.</summary>
/// <param name="BuildId">The build it belongs to.</param>
/// <param name="Sequence">Place in the record: 1, 2, 3 and on without gaps.</param>
/// <param name="Key">The key of the draft it was made from.</param>
/// <param name="Recorded">When it was recorded, UTC, by the clock of the journal.</param>
/// <param name="Person">Who did or saw it.</param>
/// <param name="Instrument">What it was measured with; empty where nothing was.</param>
/// <param name="Content">What is recorded.</param>
/// <param name="PreviousHash">Hash of the entry before; for the first entry that of the build's own record.</param>
/// <param name="Hash">SHA-256 over all of the above, as docs/methods/journal-chain.md describes; 64 lower-case hexadecimal digits.</param>
public sealed record Entry(
    Guid BuildId, int Sequence, Guid Key, DateTimeOffset Recorded, string Person, string Instrument, EntryContent Content,
    string PreviousHash, string Hash);
