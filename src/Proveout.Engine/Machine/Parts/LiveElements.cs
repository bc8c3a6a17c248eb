using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A path that is open while dead, and closed while a command is given or its control port is driven: transistor, solid-state relay.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Resistance while closed.</param>
/// <param name="Command">The command that closes it; empty when a port does.</param>
/// <param name="Port">Both nodes of the port that closes it, the positive one first; empty when a command does.</param>
/// <param name="AtLeast">Voltage at the port from which it is closed; null when a command closes it.</param>
public sealed record SwitchedPath(
    string Name, string A, string B, ResistanceBand Value, string Command, ValueList<string> Port, ElectricPotential? AtLeast)
    : CircuitElement(Name, A, B);

/// <summary>A coil that moves a control while enough voltage is across it.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node of the coil.</param>
/// <param name="B">Second node of the coil.</param>
/// <param name="Control">The control that it moves.</param>
/// <param name="Position">Where it moves the control to.</param>
/// <param name="PullsIn">Voltage from which it surely moves it.</param>
/// <param name="DropsOut">Voltage below which it surely lets go.</param>
public sealed record Drive(
    string Name, string A, string B, string Control, string Position, ElectricPotential PullsIn, ElectricPotential DropsOut)
    : CircuitElement(Name, A, B);

/// <summary>What a powered input takes: a board, a fan, a lamp, a control input. It stands for what a dead meter sees between the same nodes.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">Positive node, or line.</param>
/// <param name="B">Negative node, or neutral.</param>
/// <param name="Voltage">Voltage that it is made for.</param>
/// <param name="Current">Current that it takes at that voltage.</param>
/// <param name="WorksFrom">Voltage below which it does not work; null when not said.</param>
public sealed record Consumer(string Name, string A, string B, ElectricPotential Voltage, ElectricCurrent Current, ElectricPotential? WorksFrom)
    : CircuitElement(Name, A, B);

/// <summary>An output that holds a current, such as a motor driver's: it gives the voltage of its feed or less while its command is given.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">Node that the current comes out of.</param>
/// <param name="B">Node that it returns to.</param>
/// <param name="Feed">Both nodes of the port that feeds it, the positive one first.</param>
/// <param name="Current">Current that it holds.</param>
/// <param name="Command">The command that turns it on.</param>
public sealed record HeldCurrent(string Name, string A, string B, ValueList<string> Feed, ElectricCurrent Current, string Command)
    : CircuitElement(Name, A, B);

/// <summary>A capacitor against interference between mains and metal: too small for a meter, large enough to be felt.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="Value">Nominal capacitance.</param>
public sealed record FilterCapacitor(string Name, string A, string B, ElectricCapacitance Value) : CircuitElement(Name, A, B);

/// <summary>A residual-current trip: opens contacts when the currents through them do not add up to nothing.</summary>
/// <param name="Name">Name on the part.</param>
/// <param name="A">First node on the line side.</param>
/// <param name="B">Second node on the line side.</param>
/// <param name="Opens">The contacts that it watches and opens.</param>
/// <param name="Current">Rated residual current.</param>
public sealed record ResidualTrip(string Name, string A, string B, ValueList<string> Opens, ElectricCurrent Current) : CircuitElement(Name, A, B);
