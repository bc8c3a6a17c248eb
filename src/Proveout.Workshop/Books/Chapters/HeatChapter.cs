using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Heaters and their sensors: what sensors read, how a first warm-up goes.</summary>
internal sealed class HeatChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book) =>
        HeatPrediction.Of(book.Planned.Machine.Summary, book.Design).Bodies.Select((body, at) => new BookChapter(
            PlainNames.Of(FormattableString.Invariant($"heat {at + 1} {body.Name}")),
            $"Heat: {body.Name}",
            HeatWords.Summary(body),
            [
                new BookHeading("Sensor at the loose plug"),
                new BookTable(body.SensorName, [new("At"), new("Ohms"), new("Shown less true")], [.. body.SensorTable.Select(point => new[] { HeatWords.Celsius(point.Celsius), HeatWords.Ohms(point), HeatWords.Error(point) })]),
                .. MistakeBlocks.Of(body.Sensor, "Mistakes with the sensor"),
                new BookHeading("First warm-up"),
                .. MistakeBlocks.Of(body.WarmUp, "Mistakes that the warm-up shows"),
                new BookHeading("Guard and controller"),
                new BookList(body.Guard is { } guard ? HeatWords.Guard(guard) : ["It warms up so slowly near its target that no guard can tell a fallen sensor from it."]),
                new BookList(body.Controller is { } controller ? HeatWords.Controller(controller) : []),
            ]));
}
