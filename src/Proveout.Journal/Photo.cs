namespace Proveout.Journal;

/// <summary>A photograph of the record, with what was said about it.</summary>
/// <param name="About">The content of the entry that first attached it.</param>
/// <param name="Bytes">The bytes as they were handed over; checked against the fingerprint on reading.</param>
public sealed record Photo(PhotoAttached About, ReadOnlyMemory<byte> Bytes);
