using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>A frame as corners in space: which of them is out of place, which way and how far.</summary>
internal static class FrameSpacePart
{
    public static FramePart? Of(NamedText points, NamedText distances, TypedFigures typed, List<Diagnostic> problems)
    {
        var limit = typed.Require(FrameFields.PlaceLimit);
        var corners = SpaceLists.Points(points, typed.Require(FrameFields.HeightError), problems);
        var readings = SpaceLists.Distances(distances, typed.Require(FrameFields.TapeError), problems);
        if (problems.Count > 0 || typed.Problems.Count > 0)
            return null;
        var found = SpaceFit.Fit(corners, readings);
        if (found.Fit is { } fit)
            return Part(fit, limit);
        problems.Add(new Diagnostic("no-frame", new SourcePlace(distances.Name, 0, 0), found.Problem!, "Measure what it asks for, and hand in all readings again."));
        return null;
    }

    private static FramePart Part(SpaceFit fit, double limit)
    {
        var offsets = fit.Offsets;
        bool?[] judged = [.. offsets.Select(offset => Judged.Of(offset.Distance, limit))];
        var isInPlace = judged.All(each => each == true);
        return new FramePart(
            [
                .. offsets.SelectMany(offset => new[]
                {
                    SheetFigures.Of($"{offset.Point}: off the drawing to the right", offset.Right, "mm"),
                    SheetFigures.Of($"{offset.Point}: off the drawing to the back", offset.Back, "mm"),
                    SheetFigures.Of($"{offset.Point}: off the drawing upward", offset.Up, "mm"),
                }),
                .. fit.Twist is { } twist ? (SheetFigure[])[SheetFigures.Of("Twist: the first four corners, one off the plane of the others", twist, "mm")] : [],
            ],
            [.. Findings(fit, judged, isInPlace, limit)],
            fit.Contradiction is null && judged.Contains(false) && fit.OutOfPlace is var (corner, _) ? [$"Loosen the joints at {corner.Point}, move it {Back(corner)}, tighten, and measure its distances again."] : [],
            fit.Redundancy == 0 ? ["No reading is checked by another: a misread one would not show. Measure more diagonals than needed."] : [],
            isInPlace && fit.Contradiction is null);
    }

    private static IEnumerable<string> Findings(SpaceFit fit, bool?[] judged, bool isInPlace, double limit)
    {
        if (fit.Contradiction is { } reading)
            yield return $"The readings contradict each other, {reading} most: take it again before you believe any of this.";
        else if (isInPlace)
            yield return "Every corner is in its place.";
        else if (!judged.Contains(false))
            yield return "Whether every corner is in its place cannot be told: the uncertainty reaches over the limit. Read the tape more finely, or measure more diagonals.";
        else if (fit.OutOfPlace is not var (corner, others))
            yield return "Some corner is out of place, yet the readings do not tell which: measure more diagonals.";
        else if (others <= limit)
            yield return $"Corner {corner.Point} is out of place: the others put it {SensibleDigits.Of(corner.Distance, "mm")} from where it is.";
        else
            yield return string.Create(CultureInfo.InvariantCulture, $"Corner {corner.Point} is out of place most, by {SensibleDigits.Of(corner.Distance, "mm")}; the others do not fit the drawing either, by up to {others:0.##} mm.");
    }

    // The way back is against the offset; what is within its uncertainty is not moved.
    private static string Back(SpaceOffset offset)
    {
        string[] ways =
        [
            .. Way(offset.Right, "to the left", "to the right"),
            .. Way(offset.Back, "to the front", "to the back"),
            .. Way(offset.Up, "down", "up"),
        ];
        return string.Join(", ", ways);
    }

    private static IEnumerable<string> Way(Uncertain off, string whenAbove, string whenBelow) => Math.Abs(off.Value) <= off.Expanded
        ? []
        : [$"{SensibleDigits.Of(new Uncertain(Math.Abs(off.Value), off.Standard), "mm")} {(off.Value > 0 ? whenAbove : whenBelow)}"];
}
