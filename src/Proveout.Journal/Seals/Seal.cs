namespace Proveout.Journal;

/// <summary>A signature over how far the record of a build had come. Kept elsewhere too, it shows what was changed or cut off since.</summary>
/// <param name="BuildId">The build.</param>
/// <param name="Entries">How many entries it had.</param>
/// <param name="Hash">Hash of the last of them, or of the build's own record when there were none.</param>
/// <param name="Sealed">When it was signed, UTC, by the clock of the journal.</param>
/// <param name="Person">Whose key it is.</param>
/// <param name="PublicKey">The public key, SubjectPublicKeyInfo (RFC 5480) in base64.</param>
/// <param name="Signature">ECDSA over P-256 with SHA-256 (FIPS 186-5), as RFC 3279 writes it, in base64.</param>
public sealed record Seal(Guid BuildId, int Entries, string Hash, DateTimeOffset Sealed, string Person, string PublicKey, string Signature);
