using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The steps of wiring in their order, with the checks that each makes ready and what was photographed at it.</summary>
internal sealed class StepsChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var steps = WorkOrder.Of(book.Planned.Campaign.Context);
        var ready = WorkChecks.After(book.Planned.Campaign.Context, steps, book.Planned.Plan.Checks.Select(book.Planned.Explained));
        var shown = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            new(
                "steps",
                "Wiring, step by step",
                "Fit the wires of a step, then take the readings that follow it: they already read what they will read when all is wired.",
                [
                    new BookCautions([.. book.Planned.Dictionary.SetUps[0].Cautions]),
                    .. steps.Zip(ready).SelectMany(step => BlocksOf(book, step.First, step.Second, shown)),
                ]),
        ];
    }

    private static IEnumerable<BookBlock> BlocksOf(BookCase book, WorkStep step, IReadOnlyList<Check> checks, HashSet<string> shown)
    {
        yield return new BookHeading(FormattableString.Invariant($"Step {step.Number}. {step.Title}"));
        yield return new BookTable(
            "Fit",
            [new("Wire", 0.7), new("From", 1.4), new("To", 1.4)],
            [.. step.Conductors.Select(conductor => new[] { conductor.Id, $"{conductor.From}", $"{conductor.To}" })]);
        if (checks.Count > 0)
            yield return new BookTable(
                "Then check",
                [new("Check", 3), new("Good", 1.3)],
                [.. checks.Select(check => new[] { check.Title, CheckWords.Expected(check) })]);
        // A part is worked on in several steps; its photographs stand at the first.
        string[] here = [.. SubjectsOf(step).Where(shown.Add)];
        foreach (var photograph in book.Story?.PhotographsOf(book.Design, here.Contains) ?? [])
            yield return photograph;
    }

    private static IEnumerable<string> SubjectsOf(WorkStep step) =>
        step.Conductors.SelectMany(conductor => new[] { conductor.Id, conductor.From.Part, conductor.To.Part }).Distinct(StringComparer.Ordinal);

    /// <summary>True when a step shows what a photograph is said to show.</summary>
    public static bool Shows(MachineDesign design, string subject) =>
        design.Conductors.Any(conductor => conductor.Id == subject || conductor.From.Part == subject || conductor.To.Part == subject);
}
