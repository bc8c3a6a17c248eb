namespace Proveout.Publish.Books;

/// <summary>Anchors of a chapter's headings, unique within it.</summary>
internal sealed class ChapterAnchors
{
    private readonly Dictionary<BookHeading, string> _anchors = new(ReferenceEqualityComparer.Instance);

    public ChapterAnchors(BookChapter chapter)
    {
        foreach (var (at, heading) in chapter.Blocks.OfType<BookHeading>().Index())
            _anchors.Add(heading, FormattableString.Invariant($"part-{at + 1}"));
    }

    /// <summary>The anchor of a heading of the chapter.</summary>
    public string Of(BookHeading heading) => _anchors[heading];
}
