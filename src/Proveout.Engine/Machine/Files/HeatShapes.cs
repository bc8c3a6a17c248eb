using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How what a machine heats stands in a file.</summary>
internal static class HeatShapes
{
    private static readonly WordShape<string> Sensor = new("kind of sensor", [.. HeatSensorNames.All.Select(name => (name, name))]);

    private static readonly RecordShape<HeatedBody> Body = new(
        "heated body",
        [
            Key<HeatedBody>.Optional("heater", "Designation of its heater.", new NameShape(NameRule.Mark("part")), body => body.Heater, ""),
            Key<HeatedBody>.Needed("power", "Power of its heater at full output.", Shapes.Power, body => body.Power),
            Key<HeatedBody>.Optional("power-tolerance", "By how much the power may differ, resistance and voltage together.", Shapes.AnyShare, body => body.PowerTolerance),
            Key<HeatedBody>.Needed("target", "Temperature that it is held at in use.", Shapes.Temperature, body => body.Target),
            Key<HeatedBody>.Needed("sensor", "Kind of its sensor.", Sensor, body => body.Sensor),
            Key<HeatedBody>.Needed("pull-up", "Resistor that the sensor's input holds it against.", Shapes.Resistance, body => body.PullUp),
            Key<HeatedBody>.Optional("plate", "Width, depth and thickness of a plate of aluminium.", new OptionalShape<Outline>(LayoutShapes.Size), body => body.Plate),
            Key<HeatedBody>.Optional("insulation", "Thickness of insulation under the plate.", Shapes.AnyLength, body => body.Insulation),
            Key<HeatedBody>.Optional("uptake", "Heat that a block takes up for each kelvin.", Shapes.AnyUptake, body => body.Uptake),
            Key<HeatedBody>.Optional("loss", "What a block loses for each kelvin.", Shapes.AnyPassage, body => body.Loss),
            Key<HeatedBody>.Optional("lag", "Time constant from what is heated to what is shown.", Shapes.AnyTime, body => body.Lag),
        ],
        fields => new(
            fields.Name, fields.Get<Power>("power"), fields.Get<Temperature>("target"), fields.Text("sensor"), fields.Get<ElectricResistance>("pull-up"))
        {
            Heater = fields.Text("heater"),
            PowerTolerance = fields.Get<Ratio?>("power-tolerance"),
            Plate = fields.Get<Outline?>("plate"),
            Insulation = fields.Get<Length?>("insulation"),
            Uptake = fields.Get<HeatUptake?>("uptake"),
            Loss = fields.Get<HeatPassage?>("loss"),
            Lag = fields.Get<Duration?>("lag"),
        });

    public static readonly NamedShape<HeatedBody> Bodies = new(NameRule.Mark("heated body"), Body, body => body.Name);
}
