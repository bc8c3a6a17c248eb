using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which sensor hangs on which input, over whatever lies between them.</summary>
/// <param name="Sensor">The part that senses.</param>
/// <param name="Gives">Its terminal.</param>
/// <param name="Board">The part that reads it.</param>
/// <param name="Reads">Its input.</param>
internal sealed record SensorWiring(Part Sensor, Terminal Gives, Part Board, Terminal Reads)
{
    private const string SensorLetter = "B";

    // A heater may hold its own sensor.
    private const string HeaterLetter = "E";

    /// <summary>Every pair of a sensor and an input that metal joins, contacts left out.</summary>
    public static IEnumerable<SensorWiring> Of(WiringNetwork wiring)
    {
        var nets = new Islands(wiring.Nodes.Count, wiring.Elements.Where(element => element.IsMetal && element.Part is not Contact).Select(element => (element.A, element.B)));
        var ends = (
            from part in wiring.Design.Parts
            from terminal in part.Type.Terminals
            where terminal.Sensors.Count > 0
            select (Part: part, Terminal: terminal, Net: nets.Of(wiring.TerminalNode(new(part.Designation, terminal.Name))))).ToArray();
        var inputs = ends.Where(end => !Senses(end.Part)).ToLookup(end => end.Net);
        return
            from sensor in ends
            where Senses(sensor.Part)
            from input in inputs[sensor.Net]
            select new SensorWiring(sensor.Part, sensor.Terminal, input.Part, input.Terminal);
    }

    private static bool Senses(Part part) => part.Type.ClassLetter is SensorLetter or HeaterLetter;
}
