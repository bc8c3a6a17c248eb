using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Learns how a plate lies from probed heights, and what to turn.</summary>
public static class LevelSheet
{
    /// <summary>What follows from what was measured, or everything that is wrong with it.</summary>
    public static Outcome<SheetView> Of(LevelRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var typed = new TypedFigures(request.Typed);
        List<Diagnostic> problems = [];
        List<FramePart> parts = [];
        var map = request.Map is { } first ? MapOf(first, typed, problems) : null;
        if (map is not null)
            parts.Add(PlatePart(map, typed.Require(LevelFields.Limit), typed.Require(LevelFields.ProbeError)));
        if (map is not null && request.Supports.Trim().Length > 0 && Moves(map, request, typed, problems) is { } moves)
            parts.Add(moves);
        if (map is not null && request.Later is { } later && MapOf(later, typed, problems) is { } hot && HeatPart.Of(map, hot, later, typed, problems) is { } change)
            parts.Add(change);
        if (request.Repeats is { } repeats && ProbePart.Of(repeats, typed.Require(LevelFields.MeanWithin), problems) is { } probe)
            parts.Add(probe);
        problems = [.. typed.Problems, .. problems];
        if (problems.Count == 0 && parts.Count == 0)
            problems.Add(new Diagnostic("nothing-measured", new SourcePlace("level", 0, 0), "Nothing was measured.", "Give a table of x, y and height, a grid of heights, or repeated readings at one place."));
        return problems.Count > 0
            ? Outcome.Refused<SheetView>(problems)
            : Outcome.Of(FramePart.Sheet(parts));
    }

    private static PlateMap? MapOf(NamedText text, TypedFigures typed, List<Diagnostic> problems)
    {
        if (HeightTable.Read(text, typed, problems) is not { } points || typed.Problems.Count > 0)
            return null;
        var result = PlateMap.Of(points);
        if (result.Problem is { } problem)
            problems.Add(new Diagnostic("no-map", new SourcePlace(text.Name, 0, 0), problem, "Probe what is missing, and hand in the whole map again."));
        return result.Map;
    }

    private static FramePart PlatePart(PlateMap map, double limit, double error)
    {
        List<SheetFigure> figures =
        [
            SheetFigures.Of("Highest less lowest point", map.Range, "mm"),
            SheetFigures.Of("Tilt along x in 100 mm", 100 * map.Plane.SlopeX, "mm"),
            SheetFigures.Of("Tilt along y in 100 mm", 100 * map.Plane.SlopeY, "mm"),
            SheetFigures.Of("Flatness about the least-squares plane", map.Flatness, "mm"),
            SheetFigures.Of("Flatness, minimum zone", map.LeastFlatness, "mm"),
        ];
        if (map.Twist is { } twist)
            figures.Add(SheetFigures.Of("Twist: one corner off the plane of the others", twist, "mm"));
        if (map.Crown is { } crown)
            figures.Add(SheetFigures.Of("Middle above the corners", crown, "mm"));
        return new FramePart(
            figures,
            [Verdict(map, limit, 2 * error)],
            [],
            [.. Untold(map)],
            map.Range + (2 * error) <= limit)
        {
            Drawings = [.. new[] { PlateDrawings.AsProbed(map, error), PlateDrawings.WithoutTilt(map, error) }.OfType<SheetDrawing>()],
        };
    }

    private static IEnumerable<string> Untold(PlateMap map)
    {
        if (map.Twist is null)
            yield return "The points do not tell twist from tilt: probe all four corners.";
        else if (map.Crown is null)
            yield return "The points do not tell sag: probe the middle too.";
        if (HeightField.Of(map.Points) is null)
            yield return "The map is not drawn: its points are scattered and too many. Probe a grid of rows and columns.";
    }

    // Two readings may differ by the errors of both.
    private static string Verdict(PlateMap map, double limit, double doubt) =>
        map.Range + doubt <= limit ? "The plate is level within the limit."
        : map.LeastFlatness - doubt > limit ? "The plate is not flat enough for the limit however it is levelled: see its middle and its twist."
        : map.Range - doubt <= limit ? "Whether the plate is level within the limit cannot be told: the probe's error is too large beside what is left. Probe each point several times, or more exactly."
        : map.LeastFlatness + doubt <= limit ? "The plate is tilted; level it, and it will keep the limit."
        : "The plate is tilted; level it. Whether it then keeps the limit cannot be told with the probe's error.";

    private static FramePart? Moves(PlateMap map, LevelRequest request, TypedFigures typed, List<Diagnostic> problems)
    {
        var supports = SupportList.Read(request.Supports, problems);
        var error = typed.Require(LevelFields.ProbeError);
        var pitch = typed.Read(LevelFields.Pitch);
        if (problems.Count > 0 || typed.Problems.Count > 0)
            return null;
        var result = Levelling.Of(map, supports, error / 2, request.Leave.Trim() is { Length: > 0 } leave ? leave : null, request.MayBend);
        if (result.Advice is not { } advice)
        {
            problems.Add(new Diagnostic("no-levelling", new SourcePlace("supports", 0, 0), result.Problem!, "Put the list of supports right, and hand it in again."));
            return null;
        }

        return new FramePart(
            [
                .. advice.LeastSquares.Select(move => SheetFigures.Of($"Raise at {move.Support.Name}", move.Raise, "mm")),
                .. advice.Minimax.Select(move => SheetFigures.Of($"Raise at {move.Support.Name}, for the smallest greatest deviation", move.Raise.Value, "mm")),
                SheetFigures.Of("Left after levelling, least squares", advice.LeftByLeastSquares, "mm"),
                SheetFigures.Of("Left after levelling, smallest greatest deviation", advice.LeftByMinimax, "mm"),
                .. advice.TiltAcross is { } across ? (SheetFigure[])[SheetFigures.Of("Tilt across the two supports, which stays", across, "mm")] : [],
            ],
            advice.TiltAcross is { } stays ? [TiltWords(stays, typed.Require(LevelFields.Limit))] : [],
            [.. advice.LeastSquares.Select(move => Words(move, pitch, !request.ClockwiseLowers))],
            advice.BendsPlate ? ["These moves bend the plate to take its twist out: turn in small steps around the plate, and stop when a screw goes stiff."] : [],
            advice.TiltAcross is not { } tilt || Judged.Of(tilt, typed.Require(LevelFields.Limit)) == true);
    }

    private static string TiltWords(Uncertain across, double limit) => Judged.Of(across, limit) switch
    {
        true => "Two supports level along the line between them; across it the tilt is within the limit.",
        false => "Two supports level only along the line between them. The tilt across it stays and breaks the limit: set it where the gantry or the plate is held across that line.",
        _ => "Two supports level only along the line between them. Whether the tilt across it keeps the limit cannot be told: probe more points, or more exactly.",
    };

    private static string Words(SupportMove move, double? pitch, bool clockwiseRaises)
    {
        if (move.IsLeft)
            return $"Leave {move.Support.Name} as it is.";
        if (move.IsWithinUncertainty)
            return $"Leave {move.Support.Name} too: what it would need lies within the uncertainty.";
        var way = move.Raise.Value > 0 ? "raise" : "lower";
        var amount = SensibleDigits.Of(new Uncertain(Math.Abs(move.Raise.Value), move.Raise.Standard), "mm");
        return pitch is { } thread
            ? $"Turn {move.Support.Name} {ScrewTurn.Words(ScrewTurn.Turns(move.Raise.Value, thread, clockwiseRaises))}, seen from the side where you turn: that will {way} the plate there by {amount}."
            : string.Create(CultureInfo.InvariantCulture, $"{Capital.Of(way)} {move.Support.Name} by {amount}.");
    }
}
