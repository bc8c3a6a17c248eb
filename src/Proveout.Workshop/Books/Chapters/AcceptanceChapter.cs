using Proveout.Publish.Books;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>What to watch, prove and look at again.</summary>
internal sealed class AcceptanceChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var found = book.Story is { } story ? AcceptanceAnswers.Latest(story.Measurements) : null;
        return
        [
            new(
                "acceptance",
                "Into use",
                "What to watch, prove and look at again, from the first run on.",
                [
                    .. AcceptanceList.Of(book.Planned.Machine).Items.GroupBy(item => item.Phase).SelectMany(phase => (BookBlock[])
                    [
                        new BookHeading(AcceptanceWords.Of(phase.Key)),
                        new BookCautions(AcceptanceView.CautionsOf(phase.Key)),
                        new BookTable(
                            AcceptanceWords.Of(phase.Key),
                            [new("What", 1.8), new("Do", 3), new("Good", 2.2), new("Otherwise", 2.2), new("Source", 1.4), .. found is null ? Array.Empty<ScheduleColumn>() : [new("Found here")]],
                            [.. phase.Select(item => (string[])[item.Title, item.Instruction, item.Good, item.Otherwise, item.Source, .. found is null ? Array.Empty<string>() : [found.GetValueOrDefault(item.Id)?.Found ?? ""]])]),
                    ]),
                ]),
        ];
    }
}
