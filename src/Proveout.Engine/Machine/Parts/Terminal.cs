using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What a conductor lands on.</summary>
/// <param name="Name">Name as marked on the part.</param>
/// <param name="Role">What it carries.</param>
/// <param name="Voltage">Highest voltage it may see against its companion; null when not rated.</param>
/// <param name="Current">Highest continuous current; null when not rated.</param>
/// <param name="Reachable">False when a probe cannot touch it once the part is fitted.</param>
public sealed record Terminal(string Name, TerminalRole Role, ElectricPotential? Voltage, ElectricCurrent? Current, bool Reachable)
{
    /// <summary>Highest current for some milliseconds, as at switching on; null when not rated.</summary>
    public ElectricCurrent? Peak { get; init; }

    /// <summary>What a sensor gives at it, or an input reads at it; empty when not said.</summary>
    public ValueList<SensorKind> Sensors { get; init; } = [];
}
