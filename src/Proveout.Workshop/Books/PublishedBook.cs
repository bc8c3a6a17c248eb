using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>A book made ready.</summary>
/// <param name="Name">A name fit for a file.</param>
/// <param name="Files">Every file of its folder.</param>
/// <param name="Withheld">Free texts of the record that were left out, because they name somebody or could.</param>
public sealed record PublishedBook(string Name, IReadOnlyList<BookFile> Files, IReadOnlyList<WithheldNote> Withheld);
