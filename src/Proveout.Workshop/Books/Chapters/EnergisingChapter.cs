using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The order of first power.</summary>
internal sealed class EnergisingChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book) =>
    [
        new(
            "energising",
            "First power, stage by stage",
            EnergisingView.Premise,
            [.. book.Energising.Stages.SelectMany(BlocksOf)]),
    ];

    private static IEnumerable<BookBlock> BlocksOf(StageView stage) =>
    [
        new BookHeading(FormattableString.Invariant($"Stage {stage.Number}. {stage.Title}")),
        new BookCautions(stage.Cautions),
        new BookText(FormattableString.Invariant($"Checks before this stage exclude {stage.ExcludedBefore} mistakes that would do harm here.")),
        .. stage.Risks.Count == 0 ? [] : new BookBlock[]
        {
            new BookTable(
                "What could still do harm here",
                [new("Mistake", 3), new("Harm", 1), new("What it does", 3), new("What shows it before", 2.4)],
                [.. stage.Risks.Select(risk => new[] { risk.Sentence, SeverityWords.Of(risk.Severity), risk.Consequence, risk.OtherEvidence })]),
        },
        new BookList([.. stage.Precautions]),
        new BookList([.. stage.Instructions]) { IsNumbered = true },
        .. stage.Checks.Count == 0 ? [] : new BookBlock[]
        {
            new BookTable(
                "Before going on",
                [new("Check", 2), new("Do", 3), new("Good", 1.6)],
                [.. stage.Checks.Select(check => new[] { check.Check.Title, check.Check.Instruction, check.Expected })]),
        },
    ];
}
