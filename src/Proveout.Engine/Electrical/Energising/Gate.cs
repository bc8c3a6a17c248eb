using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A place where power can be kept out of the rest of the machine until its turn: a plug that is pulled, or a fuse that is taken out.</summary>
/// <param name="Kind">What is behind it.</param>
/// <param name="Part">The part that it is on.</param>
/// <param name="Name">Its connector or fuse.</param>
/// <param name="IsFuse">True for a fuse or circuit-breaker, false for a plug.</param>
/// <param name="Elements">Numbers of the elements that it opens.</param>
/// <param name="Pins">Nodes of its pins; empty for a fuse.</param>
/// <param name="Loads">Designations of the parts behind it.</param>
public sealed record Gate(GateKind Kind, string Part, string Name, bool IsFuse, ValueList<int> Elements, ValueList<int> Pins, ValueList<string> Loads)
{
    /// <summary>True when a node is one of its pins.</summary>
    public bool Holds(int node) => Pins.Contains(node);
}
