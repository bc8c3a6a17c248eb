using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Terminals that are made and broken together.</summary>
/// <param name="Name">Name as marked; unique on the part.</param>
/// <param name="Terminals">Names of its terminals, in the order in which they sit beside each other.</param>
/// <param name="Family">Connector family; two free connectors of one family and size can be exchanged by mistake.</param>
/// <param name="Pluggable">True when it has a plug that pulls off with its conductors.</param>
public sealed record Connector(string Name, ValueList<string> Terminals, string Family, bool Pluggable)
{
    /// <summary>How its terminals hold a conductor; null when not said.</summary>
    public ClampKind? Clamp { get; init; }

    /// <summary>Distance between the middles of neighbouring terminals; null when not said.</summary>
    public Length? Pitch { get; init; }

    /// <summary>Longest lead that its kind of signal bears; null when not said.</summary>
    public Length? Longest { get; init; }
}
