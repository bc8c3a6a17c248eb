using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What an hour of heat changes at a plate.</summary>
internal static class HeatPart
{
    public static FramePart? Of(PlateMap cold, PlateMap hot, NamedText later, TypedFigures typed, List<Diagnostic> problems)
    {
        var result = cold.ChangeTo(hot);
        if (result.Map is not { } change)
        {
            problems.Add(new Diagnostic("no-common-points", new SourcePlace(later.Name, 0, 0), $"The two maps share too few places. {result.Problem}", "Probe the same places twice."));
            return null;
        }

        var error = typed.Require(LevelFields.ProbeError);
        var range = Uncertain.WithExpanded(change.Range, ReadingsInShape * error);
        var judged = Judged.Of(range, StillMillimetres);
        var mean = Uncertain.WithExpanded(change.Points.Average(point => point.HeightMillimetres), error * Math.Sqrt(2.0 / change.Points.Count));
        return new FramePart(
            [
                SheetFigures.Of("Change: mean height", mean, "mm"),
                SheetFigures.Of("Change: shape, highest less lowest", range, "mm"),
                .. change.Crown is { } crown ? (SheetFigure[])[SheetFigures.Of("Change: middle above the corners", crown, "mm")] : [],
            ],
            [judged switch
            {
                true => "The plate keeps its shape as it warms (change below 0.1 mm, common practice).",
                false => "The plate changes its shape as it warms: see that one screw holds it and the others let it grow, and wait longer before probing.",
                _ => "Whether the plate keeps its shape as it warms cannot be told: the probe's error reaches over the limit of 0.1 mm. Probe each point several times, cold and hot.",
            }],
            [],
            [],
            judged == true)
        {
            Drawings = [.. new[] { PlateDrawings.Changed(change, error) }.OfType<SheetDrawing>()],
        };
    }

    // Common practice.
    private const double StillMillimetres = 0.1;

    // Four independent readings are in it, two places cold and hot: √4 times the error of one (JCGM 100:2008, 5.1.2).
    private const double ReadingsInShape = 2;
}
