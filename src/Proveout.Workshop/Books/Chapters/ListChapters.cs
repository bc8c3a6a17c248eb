using Proveout.Publish.Books;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The lists that a builder works from, a chapter each. The order of work has a chapter of its own.</summary>
internal sealed class ListChapters : IBookChapters
{
    private const string OrderOfWork = "order-of-work";
    private const string Parts = "part-list";

    public IEnumerable<BookChapter> Of(BookCase book) =>
        from schedule in ScheduleBooks.Of(book.Planned, ScheduleBooks.UsualReel, "").Schedules
        where schedule.Id != OrderOfWork && schedule.Rows.Count > 0
        select ChapterOf(schedule);

    private static BookChapter ChapterOf(Schedule schedule) => new(
        schedule.Id,
        schedule.Title,
        schedule.Purpose,
        [
            new BookCautions(schedule.Cautions),
            .. schedule.Total.Length > 0 ? [new BookText(schedule.Total)] : Array.Empty<BookBlock>(),
            new BookTable(schedule.Title, schedule.Columns, schedule.Rows) { IndexedColumns = schedule.Id == Parts ? [0, 1] : [] },
        ]);
}
