using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Learns how square, flat and straight a frame is from what was measured at it.</summary>
public static class FrameSheet
{
    /// <summary>What follows from what was measured, or everything that is wrong with it.</summary>
    public static Outcome<SheetView> Of(FrameRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var typed = new TypedFigures(request.Typed);
        List<Diagnostic> problems = [];
        FramePart?[] parts = [FrameSquarePart.Of(typed, problems), TwistOf(typed), RackingOf(typed), request.Rail is { } rail ? FrameRailPart.Of(rail, typed, problems) : null, SpaceOf(request, typed, problems)];
        FramePart[] known = [.. parts.OfType<FramePart>()];
        problems = [.. typed.Problems, .. problems];
        if (problems.Count == 0 && known.Length == 0 && request.Seen.Count == 0)
            problems.Add(new Diagnostic("nothing-measured", new SourcePlace("frame", 0, 0), "Nothing was measured.", "Give four sides and two diagonals, the heights of four corners, the gaps at both stops, or dial readings along a rail."));
        return problems.Count > 0
            ? Outcome.Refused<SheetView>(problems)
            : Outcome.Of(WithSeen(FramePart.Sheet(known), typed, request.Seen));
    }

    private static FramePart? SpaceOf(FrameRequest request, TypedFigures typed, List<Diagnostic> problems)
    {
        if (request is { Points: { } points, Distances: { } distances })
            return FrameSpacePart.Of(points, distances, typed, problems);
        if (request.Points is not null || request.Distances is not null)
            problems.Add(new Diagnostic("half-given", new SourcePlace("frame", 0, 0), "Corners in space and the distances between them belong together.", "Give both: where each corner is drawn, and what the tape reads between them."));
        return null;
    }

    private static SheetView WithSeen(SheetView sheet, TypedFigures typed, IReadOnlyDictionary<string, double> answers)
    {
        if (answers.Count == 0)
            return sheet;
        var seen = FrameSeen.Of(typed, answers);
        return sheet with
        {
            Seen = seen,
            IsFine = sheet.IsFine && seen.Suspects.Count == 0,
            Remarks = FrameSeen.HasSides(typed) ? sheet.Remarks : [.. sheet.Remarks, "The sides of the frame were not given: what the next check should read is said for a frame of 300 × 300 mm."],
        };
    }

    private static FramePart? TwistOf(TypedFigures typed)
    {
        if (!FrameFields.Heights.Any(typed.Has))
            return null;
        var error = typed.Require(FrameFields.HeightError);
        Uncertain[] heights = [.. FrameFields.Heights.Select(field => Uncertain.Within(typed.Require(field), error))];
        var twist = FrameTwist.Of(heights[0], heights[1], heights[2], heights[3]).StandsOff;
        var judged = Judged.Of(twist, typed.Require(FrameFields.TwistLimit));
        var (high, low) = twist.Value > 0 ? ("A and C", "B and D") : ("B and D", "A and C");
        return new FramePart(
            [SheetFigures.Of("Twist: one foot off the plane of the others", twist, "mm")],
            [judged switch
            {
                true => "The frame is flat.",
                false => $"The frame is twisted: corners {high} are high, {low} low.",
                _ => "Whether the frame is twisted cannot be told: the uncertainty reaches over the limit. Measure the heights more finely.",
            }],
            judged == false ? ["Stand the frame on a flat slab. Loosen the screws of the corners, press every foot down, and tighten in turn, crosswise. Then measure the heights again: the twist should read 0 within its uncertainty."] : [],
            [],
            judged == true);
    }

    private static FramePart? RackingOf(TypedFigures typed)
    {
        if (!typed.Has(FrameFields.LeftGap) && !typed.Has(FrameFields.RightGap))
            return null;
        var error = typed.Require(FrameFields.StopError);
        var racking = GantryRacking.Of(Uncertain.Within(typed.Require(FrameFields.LeftGap), error), Uncertain.Within(typed.Require(FrameFields.RightGap), error), typed.Require(FrameFields.Span));
        var inTwoHundred = new Uncertain(200 * racking.Angle.Value, 200 * racking.Angle.Standard);
        var judged = Judged.Of(inTwoHundred, typed.Require(FrameFields.Limit));
        var (touching, behind) = racking.LagMillimetres.Value > 0 ? ("left", "right") : ("right", "left");
        return new FramePart(
            [SheetFigures.Of("Gantry: lag in 200 mm", inTwoHundred, "mm")],
            [judged switch
            {
                true => "The gantry stands square to its rails.",
                false => $"The gantry is racked: its {behind} end stays behind when the {touching} one is at its stop.",
                _ => "Whether the gantry is racked cannot be told: the uncertainty reaches over the limit. Use a finer feeler.",
            }],
            judged == false ? [$"Loosen the beam at its {behind} end, belts slack and motors off, push both ends against their stops, and tighten. Both gaps should then read 0."] : [],
            [],
            judged == true);
    }
}
