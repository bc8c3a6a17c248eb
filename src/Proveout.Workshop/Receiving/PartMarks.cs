using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What is printed on a part or can be measured on the table: what to look for when it comes.</summary>
internal static class PartMarks
{
    /// <summary>Ratings, voltages and resistances, each with the name of what has it.</summary>
    public static IEnumerable<string> Of(Part part)
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
