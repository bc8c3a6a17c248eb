using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Makes chapters of a book.</summary>
internal interface IBookChapters
{
    /// <summary>The chapters; none when there is nothing to say.</summary>
    IEnumerable<BookChapter> Of(BookCase book);
}
