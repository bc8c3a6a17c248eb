namespace Proveout.Publish.Books;

/// <summary>A chapter: one page of the site.</summary>
/// <param name="Id">Identifier, lower case with hyphens; unique in the book, names its page.</param>
/// <param name="Title">Title.</param>
/// <param name="Purpose">What it is for, in a sentence or two.</param>
/// <param name="Blocks">What it says.</param>
public sealed record BookChapter(string Id, string Title, string Purpose, IReadOnlyList<BookBlock> Blocks)
{
    /// <summary>Everything it says, as text.</summary>
    public IEnumerable<string> Words => [Title, Purpose, .. Blocks.SelectMany(block => block.Words)];
}
