namespace Proveout.Workshop;

/// <summary>A photograph.</summary>
/// <param name="Subject">What it shows: a check, a part; may be empty.</param>
/// <param name="Caption">Words to it.</param>
/// <param name="FileName">Name of the file.</param>
/// <param name="ContentType">Media type; only image/jpeg and image/png are taken, and the bytes must be of that type.</param>
/// <param name="Bytes">The picture.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record PhotoRequest(string Subject, string Caption, string FileName, string ContentType, ReadOnlyMemory<byte> Bytes, string Person, Guid Key);
