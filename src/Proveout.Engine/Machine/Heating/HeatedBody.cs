using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What the machine heats: a plate or a block, with its heater, its sensor, and the temperature that it is held at.</summary>
/// <param name="Name">What it is called, such as <c>plate</c>.</param>
/// <param name="Power">Power of its heater at full output.</param>
/// <param name="Target">Temperature that it is held at in use.</param>
/// <param name="Sensor">Kind of its sensor: one of <see cref="HeatSensorNames.All"/>.</param>
/// <param name="PullUp">Resistor that the sensor's input holds it against.</param>
public sealed record HeatedBody(string Name, Power Power, Temperature Target, string Sensor, ElectricResistance PullUp)
{
    /// <summary>Designation of its heater; empty when not said.</summary>
    public string Heater { get; init; } = "";

    /// <summary>By how much the power may differ; null when not said.</summary>
    public Ratio? PowerTolerance { get; init; }

    /// <summary>Width, depth and thickness of a plate of aluminium; null for a block.</summary>
    public Outline? Plate { get; init; }

    /// <summary>Thickness of insulation under the plate; null when its underside is bare.</summary>
    public Length? Insulation { get; init; }

    /// <summary>Heat that a block takes up for each kelvin; null for a plate.</summary>
    public HeatUptake? Uptake { get; init; }

    /// <summary>What a block loses for each kelvin; null for a plate.</summary>
    public HeatPassage? Loss { get; init; }

    /// <summary>Time constant from what is heated to what is shown; null when not said.</summary>
    public Duration? Lag { get; init; }
}
