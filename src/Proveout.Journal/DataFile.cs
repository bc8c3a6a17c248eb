namespace Proveout.Journal;

/// <summary>The file behind a measurement, with what was made of it.</summary>
/// <param name="About">The content of the entry that first attached it.</param>
/// <param name="Bytes">The bytes as they were handed over; checked against the fingerprint on reading.</param>
public sealed record DataFile(MeasurementTaken About, ReadOnlyMemory<byte> Bytes);
