using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What is known of the calliper and of warmth, and what checking it showed.</summary>
/// <param name="Calliper">The calliper as known after the check.</param>
/// <param name="Warm">Length at 20 °C over length read, less 1.</param>
/// <param name="Repeat">How well a reading repeats, as stated, in mm.</param>
/// <param name="Findings">What the check says.</param>
internal sealed record CalliperPart(Calliper Calliper, UncertaintyBudget Warm, double Repeat, PieceFindings Findings)
{
    public static CalliperPart Of(IReadOnlyDictionary<string, string> texts, List<Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        var limit = typed.Require(PieceFields.CalliperError);
        var stated = Calliper.Unchecked(typed.Require(PieceFields.Step), limit);
        var repeat = typed.Require(PieceFields.Repeat) / Math.Sqrt(3);
        var closed = TypedSeries.Read(texts, PieceFields.Closed, problems);
        var one = TypedSeries.Read(texts, PieceFields.BlockOne, problems);
        var other = TypedSeries.Read(texts, PieceFields.BlockOther, problems);
        var blockLength = typed.Read(PieceFields.Block);
        var block = blockLength is { } length ? Uncertain.Within(length, typed.Require(PieceFields.BlockError)) : (Uncertain?)null;
        var temperature = typed.Require(PieceFields.TemperatureError);
        Warmth warmth = new(
            Uncertain.Within(typed.Require(PieceFields.PieceTemperature), temperature),
            Uncertain.Within(typed.Require(PieceFields.CalliperTemperature), temperature),
            Uncertain.Within(1e-6 * typed.Require(PieceFields.Expansion), 1e-6 * typed.Require(PieceFields.ExpansionError)),
            Warmth.SteelExpansion);
        Refuse(typed, closed, block, one, other);
        problems.AddRange(typed.Problems);
        var check = closed.Count > 0 && problems.Count == 0 ? CalliperCheck.Of(stated, closed, block, one, other) : null;
        return new(check?.Found ?? stated, warmth.Correction, repeat, Said(check, warmth.Correction, limit));
    }

    /// <summary>A reading without the known errors of calliper and warmth.</summary>
    public double Corrected(double readingMm, PieceGrip grip) => Calliper.Corrected(readingMm, grip) * (1 + Warm.Value);

    private static void Refuse(TypedFigures typed, IReadOnlyList<double> closed, Uncertain? block, IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        if (closed.Count == 0 && (block is not null || one.Count > 0 || other.Count > 0))
            typed.Refuse(PieceFields.Closed, "zero-missing", "A block was read, but not the closed jaws.", "Close the jaws five times and write each reading: the zero is taken off what the block shows.");
        if (block is null && one.Count + other.Count > 0)
            typed.Refuse(PieceFields.Block, "block-missing", "Readings at the block need its length.", PieceFields.Block.Hint);
        if (block is not null && one.Count == 0)
            typed.Refuse(PieceFields.BlockOne, "readings-missing", "The block was not read.", PieceFields.BlockOne.Hint);
        if (block is { } known && one.Concat(other).FirstOrDefault(reading => Math.Abs((reading / known.Value) - 1) > 0.05) is > 0 and var far)
            typed.Refuse(PieceFields.BlockOne, "impossible-reading", $"{SensibleDigits.Of(far, 5)} mm is no reading of a block of {SensibleDigits.Of(known.Value, 5)} mm.", Math.Abs((far * 25.4 / known.Value) - 1) < 0.05 ? "It is a length in inches: set the calliper to millimetres." : "Read it again.");
    }

    private static PieceFindings Said(CalliperCheck? check, UncertaintyBudget warm, double limit)
    {
        List<SheetFigure> figures = [];
        List<string> findings = [];
        List<string> remarks = [];
        if (check is null)
            remarks.Add($"The calliper was not checked: {SensibleDigits.Of(limit, 1)} mm for its zero, for its inside jaws and over its length is counted as doubt.");
        else
            SayChecked(check, figures, findings);
        if (Math.Abs(warm.Value) > 1e-9)
            remarks.Add($"Warmth: lengths are those at 20 °C, {SensibleDigits.Of(1e5 * Math.Abs(warm.Value))} µm in 10 mm {(warm.Value < 0 ? "less" : "more")} than read.");
        return new(figures, findings, [], remarks, check?.Length is not { } length || new PieceClaim(length, limit).Keeps != false);
    }

    private static void SayChecked(CalliperCheck check, List<SheetFigure> figures, List<string> findings)
    {
        figures.Add(PieceClaim.Figure("Calliper: shown with closed jaws", check.Zero, "mm"));
        findings.Add(check.Zero.DiffersFrom(0)
            ? "The calliper does not show zero when closed; that is taken off every reading."
            : "The zero of the calliper is right within the noise of measuring.");
        if (check.Length is { } length)
        {
            figures.Add(PieceClaim.Figure("Calliper: too long at the block", length, "mm"));
            findings.Add(length.DiffersFrom(0) ? "The calliper misreads the block; its readings are corrected in that measure." : "At the block the calliper is right within the noise of measuring.");
        }

        if (check.Reversal is { } reversal)
        {
            figures.Add(PieceClaim.Figure("Calliper: one way less the other", reversal, "mm"));
            if (reversal.DiffersFrom(0))
                findings.Add("Turned round the calliper reads differently: its jaws are not parallel or the slide has play. Take lengths near the root of the jaws, always with the same push.");
        }
    }
}
