namespace Proveout.Workshop;

/// <summary>A photograph's content.</summary>
/// <param name="ContentType">Media type.</param>
/// <param name="Bytes">The picture.</param>
public sealed record PhotoContent(string ContentType, ReadOnlyMemory<byte> Bytes);
