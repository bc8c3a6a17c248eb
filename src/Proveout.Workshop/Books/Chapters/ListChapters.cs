using Proveout.Publish.Books;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The lists that a builder works from, a chapter each. The order of work has a chapter of its own.</summary>
internal sealed class ListChapters : IBookChapters
{
    private const string OrderOfWork = "order-of-work";
    private const string Parts = "part-list";

    // A longer table goes on on another page, so that none gets heavy.
    private const int MostRows = 180;

    public IEnumerable<BookChapter> Of(BookCase book) =>
        from schedule in ScheduleBooks.Of(book.Planned, ScheduleBooks.UsualReel, "").Schedules
        where schedule.Id != OrderOfWork && schedule.Rows.Count > 0
        from part in schedule.Rows.Chunk(MostRows).Index()
        select ChapterOf(schedule, part.Index, part.Item);

    private static BookChapter ChapterOf(Schedule schedule, int part, IReadOnlyList<string>[] rows) => new(
        part == 0 ? schedule.Id : FormattableString.Invariant($"{schedule.Id}-{part + 1}"),
        part == 0 ? schedule.Title : FormattableString.Invariant($"{schedule.Title}, part {part + 1}"),
        schedule.Purpose,
        [
            new BookCautions(schedule.Cautions),
            .. schedule.Total.Length > 0 ? [new BookText(schedule.Total)] : Array.Empty<BookBlock>(),
            new BookTable(schedule.Title, schedule.Columns, rows) { IndexedColumns = schedule.Id == Parts ? [0, 1] : [] },
        ]);
}
