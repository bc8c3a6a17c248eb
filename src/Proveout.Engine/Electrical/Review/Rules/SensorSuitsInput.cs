using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An input reads the kind of sensor that hangs on it.</summary>
internal sealed class SensorSuitsInput : IReviewRule
{
    public string Id => "sensor-suits-input";

    public string Words => "kind of sensor against what its input reads";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from pair in SensorWiring.Of(context.Wiring)
        let sensor = pair.Sensor
        where !pair.Gives.Sensors.Intersect(pair.Reads.Sensors).Any()
        select new Finding(
            Id,
            FindingSeverity.Error,
            [sensor.Designation, pair.Board.Designation],
            $"{sensor.Designation} ({sensor.Name}) gives {Kinds(pair.Gives)}; input {pair.Reads.Name} of {pair.Board.Designation} reads {Kinds(pair.Reads)}: its reading is wrong, and may look right.",
            "Take a sensor that the input reads, or an input for this sensor.",
            "kinds from the part types; IEC 60751, IEC 60584-1, IEC 60947-5-2");

    private static string Kinds(Terminal terminal) => PathWords.List([.. terminal.Sensors.Select(kind => kind.ToString().ToLowerInvariant())]);
}
