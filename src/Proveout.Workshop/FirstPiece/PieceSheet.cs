using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Learns from the first test piece, from the feeder and from the calliper what to correct, and what is only the noise of measuring.</summary>
public static class PieceSheet
{
    private static readonly FigureField[] Measured =
    [
        PieceFields.Closed, PieceFields.Block, PieceFields.BlockOne, PieceFields.BlockOther, PieceFields.Before, PieceFields.After, PieceFields.Wall, PieceFields.Lean,
    ];

    /// <summary>True when something was measured, so that there is something to judge.</summary>
    public static bool IsAsked(PieceRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        TypedFigures typed = new(request.Typed);
        return request.Readings is not null || Measured.Any(typed.Has) || request.Typed.Any(text => text.Key.StartsWith(PieceFields.MeasureName(""), StringComparison.Ordinal) && text.Value.Trim().Length > 0);
    }

    /// <summary>What follows from what was measured, or everything that is wrong with it.</summary>
    public static Outcome<PieceAnswer> Of(PieceRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        List<Diagnostic> problems = [];
        var calliper = CalliperPart.Of(request.Typed, problems);
        var piece = PieceShaping.Of(request.Typed, problems);
        if (piece is null)
            return Outcome.Refused<PieceAnswer>(problems);
        List<Diagnostic> sizeProblems = [];
        var size = SizePart.Of(request, piece, calliper, sizeProblems);
        var known = new[] { Part(FeedPart.Of), Part((texts, wrong) => WallPart.Of(texts, calliper, wrong)), size?.Findings, Part(WallPart.Leaning) }.OfType<PieceFindings>().ToArray();
        problems.AddRange(sizeProblems);
        var isChecked = calliper.Findings.Findings.Count > 0;
        if (problems.Count == 0 && known.Length == 0 && !isChecked)
            problems.Add(new("nothing-measured", new SourcePlace("the piece", 0, 0), "Nothing was measured.", "Give readings of the numbered measures, the mark on the filament before and after, the thickness of the single wall, or readings of the calliper itself."));
        if (problems.Count > 0)
            return Outcome.Refused<PieceAnswer>(problems);
        PieceFindings[] all = [.. known.Any(part => part.Figures.Count > 0) || isChecked ? (PieceFindings[])[calliper.Findings] : [], .. known];
        return Outcome.Of(new PieceAnswer(
            new([.. all.SelectMany(part => part.Figures)], [.. all.SelectMany(part => part.Findings)], [.. all.SelectMany(part => part.Steps)], [.. all.SelectMany(part => part.Remarks)], all.All(part => part.IsFine)),
            size?.Lengths ?? [],
            size?.Doubts ?? [],
            PiecePlot.Of(size?.Lengths ?? [])));

        // What is wrong with one part does not keep the others from being looked through.
        PieceFindings? Part(Func<IReadOnlyDictionary<string, string>, List<Diagnostic>, PieceFindings?> read)
        {
            List<Diagnostic> wrong = [];
            var part = read(request.Typed, wrong);
            problems.AddRange(wrong.Except(problems));
            return part;
        }
    }
}
