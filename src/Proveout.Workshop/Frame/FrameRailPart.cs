using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Straightness and parallelism of a rail from dial readings.</summary>
internal static class FrameRailPart
{
    public static FramePart? Of(NamedText rail, TypedFigures typed, List<Diagnostic> problems)
    {
        var error = typed.Require(FrameFields.DialError);
        var limit = typed.Require(FrameFields.RailLimit);
        var read = DelimitedText.Read(rail.Text, rail.Name);
        problems.AddRange(read.Diagnostics);
        if (read.Value is not { } table)
            return null;
        var positions = table.Wanted("mm", problems, "position", "x", "y", "place");
        var readings = table.Wanted("mm", problems, "reading", "dial", "height", "z");
        if (positions is null || readings is null)
            return null;
        var whole = positions.Zip(readings).Where(pair => double.IsFinite(pair.First + pair.Second)).ToArray();
        if (RailLine.Of([.. whole.Select(pair => pair.First)], [.. whole.Select(pair => pair.Second)], error / Math.Sqrt(3)) is { } line)
            return Part(line, positions.Count - whole.Length, error, limit);
        problems.Add(new Diagnostic("too-few-places", new SourcePlace(rail.Name, 0, 0), "Fewer than three different places were read.", "Read the dial at both ends and at least once between; every 50 mm is better."));
        return null;
    }

    private static FramePart Part(RailLine line, int left, double error, double limit)
    {
        // Two readings make the width, each off by its error.
        var straight = Judged.Of(Uncertain.WithExpanded(line.LeastZone, 2 * error), limit);
        var parallel = Judged.Of(line.RiseMillimetres, limit);
        return new FramePart(
            [
                SheetFigures.Of("Rail: rise over its length", line.RiseMillimetres, "mm"),
                SheetFigures.Of("Rail: straightness about the line through its ends", line.AboutEnds, "mm"),
                SheetFigures.Of("Rail: straightness about the least-squares line", line.AboutLeastSquares, "mm"),
                SheetFigures.Of("Rail: straightness, minimum zone", line.LeastZone, "mm"),
            ],
            [
                straight switch { true => "The rail is straight.", false => $"The rail is {(line.MiddleMillimetres > 0 ? "high" : "low")} between its ends.", _ => "Whether the rail is straight cannot be told at this uncertainty." },
                parallel switch { true => "It runs parallel to what guided the dial.", false => "It runs away from what guided the dial.", _ => "Whether it runs parallel cannot be told at this uncertainty." },
            ],
            straight == false || parallel == false
                ? ["Loosen the rail's screws, set it against the dial from the middle outward, and tighten in two or three passes from the centre to the ends. Read the dial again."]
                : [],
            left > 0 ? [$"{left} rows without a number were left out."] : [],
            straight == true && parallel == true);
    }
}
