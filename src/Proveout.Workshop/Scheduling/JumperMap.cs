using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>Every jumper with the position that the design asks for.</summary>
internal sealed class JumperMap : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var rows = request.Design.Parts.SelectMany(RowsOf).ToArray();
        return new(
            "jumper-map",
            "Jumpers",
            "Set them before any supply is connected, and read the voltage they give before a load is plugged in.",
            [new("Part", 1.8), new("Jumper", 1.2), new("Position", 1), new("Joins", 1.8), new("Other positions", 1.6), new("Set", 0.5)],
            rows,
            ScheduleWords.Count(rows.Length, "jumper", "jumpers") + ".");
    }

    private static IEnumerable<IReadOnlyList<string>> RowsOf(Part part) =>
        from jumper in part.Type.Jumpers
        let position = part.Jumpers.FirstOrDefault(setting => setting.Jumper == jumper.Name)?.Position
        let set = jumper.Positions.FirstOrDefault(candidate => candidate.Name == position)
        select new[]
        {
            $"{part.Designation} ({part.Name})",
            jumper.Name,
            position ?? "not fitted",
            set is null ? "nothing" : $"{jumper.Common} with {set.Post}",
            string.Join(", ", jumper.Positions.Where(other => other.Name != position).Select(other => other.Name)),
            Schedule.Box,
        };
}
