using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Belts: what to cut, what moves what, how a wrong path is found.</summary>
internal sealed class BeltsChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        if (BeltProof.Of(book.Planned.Machine.Summary, book.Design) is not { } view)
            yield break;
        yield return new(
            "belts",
            "Belts and what moves what",
            "Lengths to cut, what each motor moves, and the hand checks that find a belt, pulley or plug that is not as drawn.",
            [
                new BookCautions(view.Cautions),
                new BookHeading("Belts"),
                new BookList([.. view.Findings.Select(finding => $"{finding.Sentence} {finding.Mend}")]),
                new BookTable("Belts", [new("Belt"), new("Path"), new("Stays the same"), new("Cut"), new("Trim each end when settled"), new("Bends", 3)], [.. view.Belts.Select(BeltWords.Of)]),
                new BookHeading("Motors"),
                new BookTable("Motors", [new("Motor"), new("Axis"), new("Turns for 1 mm"), new("mm for a turn"), new("mm for a full step")], [.. view.Motors.SelectMany(motor => motor.Axes.Select(share => BeltWords.Of(motor, share)))]),
                new BookHeading("Checks"),
                .. MistakeBlocks.Of(view.Table, "Mistakes with belts, pulleys and motors"),
                new BookHeading("Pulleys and idlers by hand"),
                new BookCautions([.. BeltHandChecks.All.Select(check => check.Caution).Distinct()]),
                new BookTable("By hand", [new("Check", 1.4), new("Do", 3), new("Good", 2), new("Not good", 2), new("Source", 1.4)], [.. BeltHandChecks.All.Select(check => new[] { check.Title, check.Instruction, check.Good, check.Bad, check.Source })]),
            ]);
    }
}
