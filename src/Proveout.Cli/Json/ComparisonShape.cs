using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What differs between two revisions, and what that makes of readings.</summary>
internal sealed record ComparisonShape(
    string Format,
    MachineShape Before,
    MachineShape After,
    IReadOnlyList<DifferenceShape> Changes,
    IReadOnlyList<ComparedCheckShape> Checks,
    IReadOnlyList<ComparedCheckShape> Gone,
    IReadOnlyList<TugShape> TugAgain,
    IReadOnlyList<RecordedReadingShape> Recorded)
{
    public static ComparisonShape Of(LoadedMachine before, LoadedMachine after, RevisionComparison comparison, IReadOnlyList<RecordedReading> recorded) => new(
        "proveout-comparison 1",
        MachineShape.Of(before),
        MachineShape.Of(after),
        [.. comparison.Changes.Select(DifferenceShape.Of)],
        [.. comparison.Checks.Select(ComparedCheckShape.Of)],
        [.. comparison.Gone.Select(ComparedCheckShape.Of)],
        [.. comparison.Tugs.Select(tug => new TugShape(tug.Place, [.. tug.Conductors]))],
        [.. recorded.Select(reading => new RecordedReadingShape(ComparedCheckShape.Of(reading.Compared), reading.Step.ReadingText, ShapeWords.Of(reading.Step.Status)))]);
}

/// <summary>One difference.</summary>
internal sealed record DifferenceShape(string Kind, string Rank, IReadOnlyList<string> Subjects, string Sentence)
{
    public static DifferenceShape Of(DesignChange change) => new(ShapeWords.Of(change.Kind), ShapeWords.Of(change.Rank), [.. change.Subjects], change.Sentence);
}

/// <summary>A check and what becomes of its reading.</summary>
internal sealed record ComparedCheckShape(string Id, string SetUp, string Title, string Standing, string Reason)
{
    public static ComparedCheckShape Of(ComparedCheck compared) =>
        new(compared.Check.Id, compared.Check.SetUp, compared.Check.Title, ShapeWords.Of(compared.Standing), compared.Reason);
}

/// <summary>Joints to tug again.</summary>
internal sealed record TugShape(string Place, IReadOnlyList<string> Conductors);

/// <summary>A reading on record and what becomes of it.</summary>
internal sealed record RecordedReadingShape(ComparedCheckShape Check, string Reading, string Status);
