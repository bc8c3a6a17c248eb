using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Flow from the single wall, and what the leaning fingers show.</summary>
internal static class WallPart
{
    private const int LeastPlaces = 3;

    public static PieceFindings? Of(IReadOnlyDictionary<string, string> texts, CalliperPart calliper, List<Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        if (!typed.Has(PieceFields.Wall))
            return null;
        var readings = TypedSeries.Read(texts, PieceFields.Wall, problems);
        var (line, layer) = (typed.Require(PieceFields.Line), typed.Require(PieceFields.Layer));
        var (flow, limit) = (typed.Require(PieceFields.Flow), typed.Require(PieceFields.WallLimit));
        if (typed.Problems.Count == 0 && problems.Count == 0)
            Refuse(typed, readings, line, layer);
        problems.AddRange(typed.Problems);
        return problems.Count > 0 ? null : Said(WallFlow.Of(readings, calliper.Calliper, line, layer), readings, flow, limit);
    }

    /// <summary>What the fingers say; null when nothing was typed.</summary>
    public static PieceFindings? Leaning(IReadOnlyDictionary<string, string> texts, List<Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        var lean = typed.Read(PieceFields.Lean);
        problems.AddRange(typed.Problems);
        if (lean is not { } clean)
            return null;
        var next = TestPiece.Leans.FirstOrDefault(each => each > clean);
        return new([], [next == 0 ? "Every finger came out clean: overhangs to 70 degrees from upright need no support." : string.Create(CultureInfo.InvariantCulture, $"Overhangs need support somewhere between {clean:0} and {next} degrees from upright.")], [], [], true);
    }

    private static void Refuse(TypedFigures typed, IReadOnlyList<double> readings, double line, double layer)
    {
        if (readings.Count < LeastPlaces)
            typed.Refuse(PieceFields.Wall, "too-few-places", $"{readings.Count} {(readings.Count == 1 ? "place is" : "places are")} too few.", "Measure at six places or more, away from the corners and the seam.");
        if (layer >= line)
            typed.Refuse(PieceFields.Layer, "high-layer", "A layer is lower than its line is wide.", "See that width and height are not exchanged.");
        foreach (var reading in readings.Where(reading => reading / line is < 0.4 or > 2.5))
            typed.Refuse(PieceFields.Wall, "impossible-wall", string.Create(CultureInfo.InvariantCulture, $"A wall of one line of {line:0.###} mm cannot be {reading:0.###} mm thick."), Math.Abs((reading * 25.4 / line) - 1) < 0.3 ? "It is a length in inches: set the calliper to millimetres." : "See that the part was made as one line and not as two, and measure the wall and not the tube.");
    }

    private static PieceFindings Said(WallFlow wall, IReadOnlyList<double> readings, double flowNow, double limit)
    {
        PieceClaim claim = new(wall.ThicknessMm with { Value = wall.ThicknessMm.Value - wall.TargetMm }, limit);
        var off = SensibleDigits.Of(Uncertain.WithExpanded(Math.Abs(claim.Budget.Value), claim.Budget.Expanded), "mm");
        var set = wall.Factor.Through(flowNow * wall.Factor.Value, flowNow);
        List<string> remarks = ["A calliper touches the crests of the layers, so that a rough wall reads too thick."];
        if (wall.OddPlace is { } odd)
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"The reading {readings[odd]:0.###} mm does not belong to the others (Grubbs' test): was it at the seam? Leave it out and measure at another place."));
        return new(
            [PieceClaim.Figure("Single wall: thickness", wall.ThicknessMm, "mm"), .. claim.IsReal ? (SheetFigure[])[PieceClaim.Figure("Flow: set", set, "%")] : []],
            [claim.Sentence($"The single wall is {off} too {(claim.Budget.Value < 0 ? "thin" : "thick")}", times => $"{times * readings.Count} places in all")],
            claim.AsksForMore && wall.OddPlace is null ? [$"Set the feed right first. Then set the flow to {PieceClaim.View(set, "%").Words} where parts are prepared, and make the wall again."] : [],
            remarks,
            claim.Keeps == true && wall.OddPlace is null);
    }
}
