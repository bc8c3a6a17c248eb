using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>An input reads the kind of sensor that hangs on it.</summary>
internal sealed class SensorSuitsInput : IReviewRule
{
    private const string SensorLetter = "B";

    public string Id => "sensor-suits-input";

    public string Words => "kind of sensor against what its input reads";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var nets = new Islands(context.Wiring.Nodes.Count, context.Wiring.Elements.Where(element => element.IsMetal && element.Part is not Contact).Select(element => (element.A, element.B)));
        var ends = (
            from part in context.Design.Parts
            from terminal in part.Type.Terminals
            where terminal.Sensors.Count > 0
            select (Part: part, Terminal: terminal, Net: nets.Of(context.Wiring.TerminalNode(new(part.Designation, terminal.Name))))).ToArray();
        var inputs = ends.Where(end => end.Part.Type.ClassLetter != SensorLetter && !IsHeatersOwn(end.Part)).ToLookup(end => end.Net);
        return
            from sensor in ends
            where sensor.Part.Type.ClassLetter == SensorLetter || IsHeatersOwn(sensor.Part)
            from input in inputs[sensor.Net]
            where !sensor.Terminal.Sensors.Intersect(input.Terminal.Sensors).Any()
            select new Finding(
                Id,
                FindingSeverity.Error,
                [sensor.Part.Designation, input.Part.Designation],
                $"{sensor.Part.Designation} ({sensor.Part.Name}) gives {Kinds(sensor.Terminal)}; input {input.Terminal.Name} of {input.Part.Designation} reads {Kinds(input.Terminal)}: its reading is wrong, and may look right.",
                "Take a sensor that the input reads, or an input for this sensor.",
                "kinds from the part types; IEC 60751, IEC 60584-1, IEC 60947-5-2");
    }

    // A heater may hold its own sensor.
    private static bool IsHeatersOwn(Part part) => part.Type.ClassLetter == "E";

    private static string Kinds(Terminal terminal) => PathWords.List([.. terminal.Sensors.Select(kind => kind.ToString().ToLowerInvariant())]);
}
