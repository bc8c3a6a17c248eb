namespace Proveout.Journal.Rescue;

/// <summary>Where the bytes of a photograph or data file stand, to be read when they are written: all of a journal's together may be more than the memory.</summary>
/// <param name="Sha256">Their SHA-256 as they stand there.</param>
/// <param name="Local">The part of the row that stands within its page.</param>
/// <param name="Payload">Bytes of the row.</param>
/// <param name="Start">Where in it the file begins.</param>
/// <param name="Length">Bytes of the file.</param>
/// <param name="Next">The first overflow page; 0 for a row within its page.</param>
/// <param name="IsNewest">Whether pages count as last written ahead.</param>
internal sealed record FoundFile(string Sha256, byte[] Local, int Payload, int Start, int Length, int Next, bool IsNewest);
