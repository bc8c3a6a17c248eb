namespace Proveout.Engine.Machine;

/// <summary>Terminals that are made and broken together.</summary>
/// <param name="Name">Name as marked; unique on the part.</param>
/// <param name="Terminals">Names of its terminals, in the order in which they sit beside each other.</param>
/// <param name="Family">Connector family; two free connectors of one family and size can be exchanged by mistake.</param>
/// <param name="Pluggable">True when it has a plug that pulls off with its conductors.</param>
public sealed record Connector(string Name, ValueList<string> Terminals, string Family, bool Pluggable);
