namespace Proveout.Publish.Books;

/// <summary>A file of the published book.</summary>
/// <param name="Name">Its place in the folder of the book, with <c>/</c> between folders.</param>
/// <param name="MediaType">What it is, as RFC 6838 names it.</param>
/// <param name="Bytes">Its content.</param>
public sealed record BookFile(string Name, string MediaType, ReadOnlyMemory<byte> Bytes);
