using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The class of every node, from the roles of the terminals on its metal with all plugs mated and controls at rest.</summary>
internal sealed class NetClasses
{
    private readonly MetalNets _nets;
    private readonly NetClass[] _classOfNet;

    public NetClasses(WiringNetwork wiring)
    {
        var mated = new StateNetwork(wiring, new MachineState(false, []));
        _nets = new MetalNets(wiring, mated.Conducts);
        _classOfNet = new NetClass[_nets.Count];
        foreach (var node in wiring.Nodes.Where(node => node.Kind == NodeKind.Terminal))
        {
            var role = wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Role;
            ref var known = ref _classOfNet[_nets.Of(node.Index)];
            known = Stronger(known, ClassOf(role));
        }
    }

    /// <summary>The class of a node.</summary>
    public NetClass Of(int node) => _classOfNet[_nets.Of(node)];

    /// <summary>True when two nodes are the same metal.</summary>
    public bool AreSame(int a, int b) => _nets.Of(a) == _nets.Of(b);

    // 0 V may be bonded to the protective conductor on purpose (PELV); such a net is still the 0 V of its supply to what hangs on it.
    private static NetClass Stronger(NetClass one, NetClass two) => one > two ? one : two;

    private static NetClass ClassOf(TerminalRole role) => role switch
    {
        TerminalRole.ProtectiveEarth => NetClass.ProtectiveEarth,
        TerminalRole.Line => NetClass.Line,
        TerminalRole.Neutral => NetClass.Neutral,
        TerminalRole.Positive => NetClass.Positive,
        TerminalRole.ZeroVolt => NetClass.ZeroVolt,
        _ => NetClass.Signal,
    };
}
