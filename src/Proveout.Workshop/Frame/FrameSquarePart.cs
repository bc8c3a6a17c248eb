using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Squareness from sides, diagonals and squares.</summary>
internal static class FrameSquarePart
{
    private static readonly string[] Names = ["A", "B", "C", "D"];

    public static FramePart? Of(TypedFigures typed, List<Diagnostic> problems)
    {
        if (!FrameFields.Distances.Any(typed.Has) && !FrameFields.Corners.Any(typed.Has))
            return null;
        var tape = typed.Require(FrameFields.TapeError);
        var lengths = FrameFields.Distances.Select(field => (Name: field.Name.ToUpperInvariant(), Length: typed.Read(field))).ToArray();
        MeasuredDistance[] distances = [.. lengths.SelectMany(distance => distance.Length is { } length ? new[] { new MeasuredDistance(distance.Name[..1], distance.Name[1..], Uncertain.Within(length, tape)) } : [])];
        var width = lengths[0].Length ?? lengths[2].Length;
        var depth = lengths[3].Length ?? lengths[1].Length;
        var corners = CornersOf(typed);
        var limit = typed.Require(FrameFields.Limit);
        if (width is null || depth is null)
            problems.Add(new Diagnostic("sides-missing", new SourcePlace("frame", 0, 0), "A side each way is missing.", "Measure A-B or C-D, and B-C or D-A, beside the diagonals."));
        if (problems.Count > 0 || typed.Problems.Count > 0)
            return null;
        var found = FrameFit.Fit([new("A", 0, 0), new("B", width!.Value, 0), new("C", width.Value, depth!.Value), new("D", 0, depth.Value)], distances, corners);
        if (found.Fit is { } fit)
            return Part(fit, FrameSquareness.Of(fit, Names), limit);
        problems.Add(new Diagnostic("no-frame", new SourcePlace("frame", 0, 0), found.Problem!, "Measure what it asks for, and hand in all readings again."));
        return null;
    }

    private static MeasuredCorner[] CornersOf(TypedFigures typed)
    {
        List<MeasuredCorner> corners = [];
        foreach (var (index, field) in FrameFields.Corners.Index())
            if (typed.Read(field) is { } open)
                corners.Add(new(Names[index], Names[(index + 1) % 4], Names[(index + 3) % 4], Uncertain.Within(open, typed.Require(FrameFields.SquareError)), typed.Require(FrameFields.Leg)));
        return [.. corners];
    }

    private static FramePart Part(FrameFit fit, FrameSquareness frame, double limit)
    {
        Uncertain[] open = [.. frame.Corners.Select(corner => new Uncertain(200 * corner.BeyondRight.Value, 200 * corner.BeyondRight.Standard))];
        bool?[] judged = [.. open.Select(corner => Judged.Of(corner, limit))];
        var isSquare = judged.All(each => each == true);
        return new FramePart(
            [
                .. frame.Corners.Zip(open, (corner, figure) => SheetFigures.Of($"Corner {corner.Name}: open in 200 mm", figure, "mm")),
                SheetFigures.Of("Diagonal A-C by all readings", frame.FirstDiagonal, "mm"),
                SheetFigures.Of("Diagonal B-D by all readings", frame.SecondDiagonal, "mm"),
            ],
            [.. Findings(fit, frame, judged, isSquare)],
            fit.Contradiction is null && judged.Contains(false) ? [.. Steps(frame)] : [],
            [.. Remarks(fit)],
            isSquare && fit.Contradiction is null);
    }

    private static IEnumerable<string> Findings(FrameFit fit, FrameSquareness frame, bool?[] judged, bool isSquare)
    {
        if (fit.Contradiction is { } reading)
            yield return $"The readings contradict each other, {reading} most: take it again before you believe any of this.";
        else if (isSquare)
            yield return "The frame is square.";
        else if (judged.Contains(false))
            yield return $"The frame is out of square, corner {frame.Worst.Name} most: it is too {(frame.Worst.BeyondRight.Value > 0 ? "wide" : "narrow")}.";
        else
            yield return "Whether the frame is square cannot be told: the uncertainty reaches over the limit. Read the diagonals more finely, or use a square with a long leg.";
        if (frame.LeftOver.Value > frame.LeftOver.Expanded)
            yield return string.Create(CultureInfo.InvariantCulture, $"Opposite sides differ: {200 * frame.LeftOver.Value:0.00} mm in 200 mm stay at some corner however you push. Compare A-B with C-D, and B-C with D-A, and shorten or shim the odd one.");
    }

    private static IEnumerable<string> Steps(FrameSquareness frame)
    {
        var push = SensibleDigits.Of(new Uncertain(Math.Abs(frame.PushMillimetres.Value), frame.PushMillimetres.Standard), "mm");
        var (way, draw) = frame.PushMillimetres.Value > 0 ? ("towards the side of B and C", "B and D") : ("towards the side of A and D", "A and C");
        yield return $"Loosen corner {frame.Worst.Name}, and the other corners just enough to follow. Hold side A-B still and push side C-D {way} by {push}: a clamp across the long diagonal that draws {draw} together does it.";
        yield return $"The diagonals should then read A-C {SensibleDigits.Of(frame.FirstDiagonalAfter, "mm")} and B-D {SensibleDigits.Of(frame.SecondDiagonalAfter, "mm")}. Tighten, and measure both again.";
    }

    private static IEnumerable<string> Remarks(FrameFit fit)
    {
        if (!fit.IsChecked)
            yield return "Some readings are checked by no other: a misread one would not show. Measure all four sides and both diagonals.";
        if (fit.Redundancy > 0 && fit.Scatter > 2)
            yield return string.Create(CultureInfo.InvariantCulture, $"The readings disagree {fit.Scatter:0.0} times as much as the stated error allows; all uncertainties here are widened by that.");
    }
}
