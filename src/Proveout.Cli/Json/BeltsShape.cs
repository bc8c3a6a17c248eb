using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What is known of a machine's belts.</summary>
internal sealed record BeltsShape(
    string Format,
    string Machine,
    IReadOnlyList<BeltFindingShape> Findings,
    IReadOnlyList<BeltShape> Belts,
    IReadOnlyList<MotorRow> Motors,
    MistakeTableShape Mistakes,
    IReadOnlyList<IReadOnlyList<string>> Alike,
    SeenShape? Seen,
    long? Kept)
{
    public static BeltsShape Of(BeltsView view, SeenView? seen, long? kept) => new(
        "proveout-belts 1",
        view.Machine.Name,
        [.. view.Findings.Select(finding => new BeltFindingShape(finding.Rule, [.. finding.Subjects], finding.Sentence, finding.Mend, finding.Source))],
        [.. view.Belts.Select(BeltShape.Of)],
        view.Motors,
        MistakeTableShape.Of(view.Table),
        view.Alike,
        seen is null ? null : SeenShape.Of(seen),
        kept);
}

/// <summary>A finding of the path rules.</summary>
internal sealed record BeltFindingShape(string Rule, IReadOnlyList<string> Subjects, string Sentence, string Mend, string Source);

/// <summary>A belt; lengths are null where its path has no room.</summary>
internal sealed record BeltShape(
    string Name, bool IsClosed, LimitsShape LengthMm, bool IsConstant, double? CutMm, int Teeth, double TrimMm, IReadOnlyList<BendRow> Bends)
{
    public static BeltShape Of(BeltRow row) => new(
        row.Name, row.IsClosed, new(Known(row.ShortestMm), Known(row.LongestMm)), row.IsConstant, Known(row.CutMm), row.Teeth, row.TrimMm, row.Bends);

    private static double? Known(double millimetres) => double.IsFinite(millimetres) ? millimetres : null;
}
