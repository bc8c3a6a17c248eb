using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>What to cut from which reel, longest first, and what is left of it.</summary>
internal sealed class CutList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var reels = request.Design.Conductors
            .GroupBy(conductor => (conductor.CrossSection, conductor.Colour))
            .OrderByDescending(wire => wire.Key.CrossSection.SquareMillimeters)
            .ThenBy(wire => wire.Key.Colour)
            .SelectMany(wire => ReelCutting
                .Cut(wire, request.ReelLength.Millimeters, conductor => conductor.Length.Millimeters)
                .Select((pieces, at) => (wire.Key.CrossSection, wire.Key.Colour, Number: at + 1, Pieces: pieces)))
            .ToArray();
        return new(
            "cut-list",
            "Cut list",
            $"Cut each reel's wires in this order and label both ends at once. Reels of {ScheduleWords.Metres(request.ReelLength.Millimeters)}; lengths have no allowance for a slip.",
            [new("Reel", 2.2), new("Wire", 0.9), new("Length", 1), new("Left on the reel", 1.3), new("Cut", 0.6)],
            [.. reels.SelectMany(reel => RowsOf(request, reel.CrossSection, reel.Colour, reel.Number, reel.Pieces))],
            $"{ScheduleWords.Count(reels.Length, "reel", "reels")} of {ScheduleWords.Count(reels.Select(reel => (reel.CrossSection, reel.Colour)).Distinct().Count(), "kind", "kinds")} of wire; "
                + $"{ScheduleWords.Metres(reels.Sum(reel => WasteMm(request, reel.Pieces)))} stay on the reels.");
    }

    private static IEnumerable<IReadOnlyList<string>> RowsOf(
        ScheduleRequest request, Area section, ConductorColour colour, int number, IReadOnlyList<Conductor> pieces)
    {
        var left = request.ReelLength.Millimeters;
        foreach (var piece in pieces)
        {
            left -= piece.Length.Millimeters;
            yield return
            [
                $"{ScheduleWords.Of(section)} {ColourWords.Of(colour)}, reel {ScheduleWords.Of(number)}",
                piece.Id,
                ScheduleWords.Of(piece.Length),
                left < 0 ? "longer than a reel" : ScheduleWords.Metres(Math.Floor(left / 100) * 100),
                Schedule.Box,
            ];
        }
    }

    private static double WasteMm(ScheduleRequest request, IReadOnlyList<Conductor> pieces) =>
        Math.Max(0, request.ReelLength.Millimeters - pieces.Sum(piece => piece.Length.Millimeters));
}
