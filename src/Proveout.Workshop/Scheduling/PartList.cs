using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
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
        [.. request.Design.Parts.OrderBy(part => part.Type.ClassLetter, StringComparer.Ordinal).ThenBy(part => part.Type.Name, StringComparer.Ordinal).Select(RowOf)],
        $"{ScheduleWords.Count(request.Design.Parts.Count, "part", "parts")} of {ScheduleWords.Count(request.Design.Parts.Select(part => part.Type.Id).Distinct().Count(), "type", "types")}.");

    private static IReadOnlyList<string> RowOf(Part part) =>
        [part.Designation, part.Type.Name, part.Name, string.Join("; ", LookFor(part)), Schedule.Box, Schedule.Box, Schedule.Box];

    // What is printed on a part or can be measured on the table.
    private static IEnumerable<string> LookFor(Part part)
    {
        foreach (var fuse in part.Type.Circuit.OfType<Fuse>())
            if (fuse.Rating is { } rating)
                yield return $"{fuse.Name} {ScheduleWords.Of(rating)}";
        foreach (var source in part.Type.Circuit.OfType<Source>())
            yield return $"{source.Name} {ScheduleWords.Of(source.Voltage)}";
        foreach (var consumer in part.Type.Circuit.OfType<Consumer>())
            yield return $"{consumer.Name} {ScheduleWords.Of(consumer.Voltage)}";
        foreach (var resistor in part.Type.Circuit.OfType<Resistor>().Where(resistor => IsBetweenTerminals(part.Type, resistor)))
            if ((part.Values.FirstOrDefault(value => value.Element == resistor.Name)?.Value ?? resistor.Value) is { Nominal.Ohms: >= 1, High: { } high } band)
                yield return $"{resistor.Name} {ReadingWords.Of(new ReadingInterval(band.Low.Ohms, high.Ohms))}";
    }

    private static bool IsBetweenTerminals(PartType type, Resistor resistor) =>
        type.FindTerminal(resistor.A) is not null && type.FindTerminal(resistor.B) is not null;
}
