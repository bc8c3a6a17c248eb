using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>What only eye, tug and hand find.</summary>
internal sealed class WalkChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var walk = WalkRound.Of(book.Planned);
        return
        [
            new(
                "walk",
                "What only eye, tug and hand find",
                walk.Coverage,
                [
                    .. walk.Places.SelectMany(place => (BookBlock[])
                    [
                        new BookHeading(place.SetUp.Title),
                        new BookCautions(place.SetUp.Cautions),
                        new BookList(place.SetUp.Instructions),
                        new BookTable(
                            place.SetUp.Title,
                            [new("Look at", 1.6), new("Do", 3), new("Good", 2)],
                            [.. place.Checks.Select(check => new[] { check.Check.Title, check.Check.Instruction, check.Check.Unit.Length > 0 ? check.Expected : check.Check.Why })]),
                    ]),
                ]),
        ];
    }
}
