namespace Proveout.Engine.Machine;

/// <summary>An actuator that a person operates: a switch, a button, a lever.</summary>
/// <param name="Name">Name, unique on the part.</param>
/// <param name="Positions">Its positions, in plain words.</param>
/// <param name="Rest">The position for dead tests unless a check says otherwise; one of <paramref name="Positions"/>.</param>
public sealed record Control(string Name, ValueList<string> Positions, string Rest);
