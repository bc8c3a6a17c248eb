using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>Every conductor with both its ends.</summary>
internal sealed class WireList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request) => new(
        "wire-list",
        "Wire list",
        "Every conductor with what its ends land on and get. Tick a line when it is fitted, and again when a second look from the other end agrees.",
        [new("Wire", 0.8), new("From", 2.2), new("To", 2.2), new("Section", 0.9), new("Colour", 1), new("Length", 0.9), new("Through", 1.6), new("Fitted", 0.7), new("Seen", 0.6)],
        [.. request.Design.Conductors.Select(conductor => RowOf(request.Design, conductor))],
        $"{ScheduleWords.Count(request.Design.Conductors.Count, "conductor", "conductors")}, "
            + $"{ScheduleWords.Metres(request.Design.Conductors.Sum(conductor => conductor.Length.Millimeters))} of wire.");

    private static IReadOnlyList<string> RowOf(MachineDesign design, Conductor conductor) =>
    [
        conductor.Id,
        End(design, conductor, conductor.From),
        End(design, conductor, conductor.To),
        ScheduleWords.Of(conductor.CrossSection),
        ColourWords.Of(conductor.Colour),
        ScheduleWords.Of(conductor.Length) + (conductor.LengthIsComputed ? " *" : ""),
        string.Join(", ", conductor.Route),
        Schedule.Box,
        Schedule.Box,
    ];

    private static string End(MachineDesign design, Conductor conductor, TerminalReference end) =>
        $"{ScheduleWords.Of(design, end)}: {Terminations.At(design, conductor, end).Words}";
}
