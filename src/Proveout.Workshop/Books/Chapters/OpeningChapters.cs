using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>How to use the book, and what can hurt.</summary>
internal sealed class OpeningChapters : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book) => [HowToUse(book), Cautions(book)];

    private static BookChapter HowToUse(BookCase book) => new(
        "how-to-use",
        "How to use this book",
        "What is in it, what it rests on, and how to find your way.",
        [
            new BookList(
            [
                "Read the cautions first. They stand again before each step that can hurt.",
                "Receive and lay out the parts with the lists; the drawings show where each conductor lands.",
                "Wire step by step. After each step come the checks that are ready then: do them before going on.",
                "Before any power take every check of the plan. A reading inside the limits excludes the mistakes that are named beside it; one outside them means one of those, most dangerous first.",
                "What no meter tells is left to eye, tug and hand: walk round the machine with that chapter.",
                "Energise in the order given, stage by stage, and only when everything before has passed.",
            ]) { IsNumbered = true },
            new BookHeading("What it rests on"),
            new BookText("All expectations are computed from the machine file that comes with this book. A part that differs from it changes what the checks read: put it into the file, and let the expectations be computed anew."),
            new BookText(book.Story is null
                ? "This book tells of the machine as designed, not of a build of it."
                : "Readings, photographs and notes are of one build. Those of yours will differ within the limits given."),
            new BookHeading("Finding your way"),
            new BookText("Every page leads to the contents, to an index from A to Z and to a search; all of it works without a network. The whole book is also there as one document for paper."),
        ]);

    private static BookChapter Cautions(BookCase book) => new(
        "cautions",
        "Cautions",
        "What can hurt whoever builds, proves and first runs this machine.",
        [
            new BookCautions([.. book.Planned.Dictionary.SetUps[0].Cautions, BuildBook.NotASafetyStatement]),
            new BookHeading("When it is energised"),
            new BookCautions([.. book.Energising.Stages.SelectMany(stage => stage.Cautions).Distinct()]),
            new BookText(EnergisingView.Premise),
            new BookHeading("When it runs"),
            new BookCautions(AcceptanceView.CautionsOf(AcceptancePhase.FirstRun)),
        ]);
}
