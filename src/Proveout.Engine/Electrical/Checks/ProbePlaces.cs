using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The nodes that a lead can touch in one state of the machine.</summary>
internal sealed class ProbePlaces
{
    private readonly WiringNetwork _wiring;
    private readonly MachineState _state;
    private readonly bool[] _holds;

    public ProbePlaces(WiringNetwork wiring, MachineState state)
    {
        _wiring = wiring;
        _state = state;
        _holds = [.. wiring.Nodes.Select(IsReachable)];
        Nodes = [.. _holds.Index().Where(node => node.Item).Select(node => node.Index)];
    }

    /// <summary>The nodes, by number.</summary>
    public IReadOnlyList<int> Nodes { get; }

    /// <summary>True when a lead can touch a node.</summary>
    public bool Holds(int node) => _holds[node];

    /// <summary>Where to touch, in words.</summary>
    public CheckPoint PointOf(int node)
    {
        var at = _wiring.Nodes[node];
        var side = !_state.PlugsApart ? "" : at.Kind == NodeKind.PlugContact ? "plug" : IsPluggable(at) ? "pins" : "";
        return new CheckPoint(at.Subject, at.Place, side);
    }

    private bool IsReachable(NetworkNode node) => node.Kind switch
    {
        NodeKind.PlugContact => TerminalOf(node).Reachable,
        NodeKind.Terminal => TerminalOf(node).Reachable && (_state.PlugsApart || !IsPluggable(node)),
        _ => false,
    };

    private Terminal TerminalOf(NetworkNode node) => _wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!;

    private bool IsPluggable(NetworkNode node) =>
        node.Kind == NodeKind.PlugContact || _wiring.Design.FindPart(node.Subject)!.Type.ConnectorOf(node.Place) is { Pluggable: true };
}
