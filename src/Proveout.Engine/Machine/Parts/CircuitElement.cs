using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A primitive of the circuit inside a part, between two of its nodes (terminals or inner nodes).</summary>
/// <remarks>A closed family: match on the kind.</remarks>
/// <param name="Name">Name, unique on the part; a machine file may give its value anew under it.</param>
/// <param name="A">First node. For a diode the anode, for a source the positive pole.</param>
/// <param name="B">Second node.</param>
public abstract record CircuitElement(string Name, string A, string B);

/// <summary>A resistance: a heater, a coil, a sensor, a track, a shunt.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Its resistance at room temperature.</param>
public sealed record Resistor(string Name, string A, string B, ResistanceBand Value) : CircuitElement(Name, A, B);

/// <summary>A fuse, circuit-breaker or thermal cut-off: conducts unless it has operated.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Its cold resistance.</param>
/// <param name="Rating">Rated current; null when not said.</param>
public sealed record Fuse(string Name, string A, string B, ResistanceBand Value, ElectricCurrent? Rating) : CircuitElement(Name, A, B)
{
    /// <summary>How fast it interrupts; null when not said.</summary>
    public FuseCurve? Curve { get; init; }
}

/// <summary>A contact that a control opens and closes.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Control">Name of the control that moves it.</param>
/// <param name="ClosedAt">Positions of the control in which it conducts.</param>
/// <param name="Value">Resistance while closed.</param>
public sealed record Contact(string Name, string A, string B, string Control, ValueList<string> ClosedAt, ResistanceBand Value)
    : CircuitElement(Name, A, B);

/// <summary>A junction: diode, LED, body diode, rectifier branch. Conducts from anode <c>A</c> to cathode <c>B</c> once its forward voltage is reached.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">Anode.</param>
/// <param name="B">Cathode.</param>
/// <param name="ForwardLow">Lowest forward voltage at meter current.</param>
/// <param name="ForwardHigh">Highest forward voltage at meter current.</param>
public sealed record Diode(string Name, string A, string B, ElectricPotential ForwardLow, ElectricPotential ForwardHigh)
    : CircuitElement(Name, A, B);

/// <summary>A capacitor: open once charged, so that the reading climbs before it stands.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Nominal capacitance.</param>
public sealed record Capacitor(string Name, string A, string B, ElectricCapacitance Value) : CircuitElement(Name, A, B);

/// <summary>A source that is dead while the machine is isolated; its terminals then show only what lies beside it.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">Positive pole, or line.</param>
/// <param name="B">Negative pole, or neutral.</param>
/// <param name="Voltage">Voltage when energised.</param>
/// <param name="Limit">Highest current it delivers; null when not limited.</param>
public sealed record Source(string Name, string A, string B, ElectricPotential Voltage, ElectricCurrent? Limit) : CircuitElement(Name, A, B)
{
    /// <summary>What it lives on; null when it stands on its own.</summary>
    public SourceFeed? Feed { get; init; }

    /// <summary>True when it shuts off above its limit, false when it holds the current there.</summary>
    public bool ShutsOff { get; init; }
}

/// <summary>
/// A port that differs from design to design: any reading inside the band is possible, so a reading there says nothing else.
/// </summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Every chord resistance that some design of this part shows.</param>
public sealed record Unpredictable(string Name, string A, string B, ResistanceBand Value) : CircuitElement(Name, A, B);

/// <summary>Insulation between two nodes: never less than a limit.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="AtLeast">Lowest insulation resistance of a sound part.</param>
public sealed record Insulation(string Name, string A, string B, ElectricResistance AtLeast) : CircuitElement(Name, A, B);
