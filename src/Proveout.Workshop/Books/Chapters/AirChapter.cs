using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The air in the bays.</summary>
internal sealed class AirChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book) =>
        AirPrediction.Of(book.Planned.Machine.Summary, book.Design).Bays.Select((bay, at) => new BookChapter(
            PlainNames.Of(FormattableString.Invariant($"air {at + 1} {bay.Name}")),
            $"Air: {bay.Name}",
            "What gives off heat, what the fans move, how warm the air gets at each part.",
            [
                new BookList([.. AirWords.Summary(bay), .. bay.NotKnown.Select(sentence => $"Not known: {sentence}"), .. bay.Switches.Select(AirWords.Switch)]),
                new BookTable("Heat", [new("Heat of", 2), new("At rest"), new("At work, at most"), new("How", 3)], [.. bay.Heat.Select(heat => new[] { AirWords.NameOf(heat), AirWords.Watts(heat.RestLeast, heat.RestMost), AirWords.Most(heat.WorkMost), string.Join("; ", heat.How) })]),
                new BookTable("Ways of the air", [new("Opening"), new("Fan"), new("Air, new filters")], [.. bay.Ways.Select(way => new[] { way.Name, way.Fan, AirWords.Flow(way) })]),
                new BookTable("How warm it gets", [new("Part"), new("Air at it, at most"), new("Bears"), new("Verdict", 2)], [.. bay.Parts.Select(part => new[] { part.Part, AirWords.Hottest(part.HottestCelsius), AirWords.Bears(part), AirWords.Verdict(part) })]),
                new BookHeading("Checks"),
                .. MistakeBlocks.Of(bay.Mistakes, "Mistakes with the air"),
            ]));
}
