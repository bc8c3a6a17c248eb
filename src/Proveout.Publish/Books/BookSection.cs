namespace Proveout.Publish.Books;

/// <summary>A stretch of a book under one heading, with what it says: what index and search lead to.</summary>
/// <param name="Chapter">The chapter.</param>
/// <param name="Heading">Its heading; empty before the first one of a chapter.</param>
/// <param name="Address">Where it is on the site.</param>
/// <param name="Blocks">What it says.</param>
internal sealed record BookSection(BookChapter Chapter, string Heading, string Address, IReadOnlyList<BookBlock> Blocks)
{
    /// <summary>What it is called.</summary>
    public string Title => Heading.Length > 0 ? $"{Chapter.Title}: {Heading}" : Chapter.Title;

    /// <summary>Everything it says, as text.</summary>
    public IEnumerable<string> Words => [Chapter.Title, Heading, .. Heading.Length == 0 ? [Chapter.Purpose] : Array.Empty<string>(), .. Blocks.SelectMany(block => block.Words)];

    /// <summary>The stretches of a book in their order.</summary>
    public static IEnumerable<BookSection> Of(BuildBook book) => book.Chapters.SelectMany(Of);

    private static IEnumerable<BookSection> Of(BookChapter chapter)
    {
        var anchors = new ChapterAnchors(chapter);
        var current = new List<BookBlock>();
        BookHeading? heading = null;
        foreach (var block in chapter.Blocks)
        {
            if (block is not BookHeading next)
            {
                current.Add(block);
                continue;
            }

            yield return Made();
            (heading, current) = (next, []);
        }

        yield return Made();

        BookSection Made() => new(chapter, heading?.Text ?? "", heading is null ? BookSite.NameOf(chapter) : $"{BookSite.NameOf(chapter)}#{anchors.Of(heading)}", current);
    }
}
