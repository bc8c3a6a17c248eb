using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>Every part with boxes for what came in the parcel.</summary>
internal sealed class PartList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request) => new(
        "part-list",
        "Parts and receiving check",
        "Tick what came. A part that differs in voltage, value or terminals changes what the checks should read: note it, and put it into the machine file before wiring.",
        [new("Part", 0.7), new("What it is", 2.4), new("For", 2), new("Look for", 2.4), new("Got", 0.5), new("Missing", 0.7), new("Different", 0.8)],
        [.. PartOrder.Of(request.Design).Select(RowOf)],
        $"{ScheduleWords.Count(request.Design.Parts.Count, "part", "parts")} of {ScheduleWords.Count(request.Design.Parts.Select(part => part.Type.Id).Distinct().Count(), "type", "types")}.");

    private static IReadOnlyList<string> RowOf(Part part) =>
        [part.Designation, part.Type.Name, part.Name, string.Join("; ", PartMarks.Of(part)), Schedule.Box, Schedule.Box, Schedule.Box];
}
