using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The class of every node, from the roles of the terminals on its metal with all plugs mated and controls at rest.</summary>
internal sealed class NetClasses
{
    private readonly MetalNets _nets;
    private readonly MetalNets _protective;
    private readonly NetClass[] _classOfNet;
    private readonly HashSet<int> _protectiveNets;

    public NetClasses(WiringNetwork wiring)
    {
        var mated = new MachineState(false, []);
        _nets = new MetalNets(wiring, element => StateNetwork.Conducts(wiring, mated, element));
        _classOfNet = new NetClass[_nets.Count];
        foreach (var copper in wiring.Elements.Where(element => element.Kind == ElementKind.Copper))
            _classOfNet[_nets.Of(copper.A)] = NetClass.Signal;
        _protective = new MetalNets(wiring, element => StateNetwork.Conducts(wiring, mated, element) && !IsOtherConductor(wiring, element));
        _protectiveNets = [.. wiring.Nodes.Where(node => IsProtective(wiring, node)).Select(node => _protective.Of(node.Index))];
        foreach (var node in wiring.Nodes.Where(node => node.Kind == NodeKind.Terminal))
        {
            var role = wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Role;
            ref var known = ref _classOfNet[_nets.Of(node.Index)];
            if (known != NetClass.Spare)
                known = Stronger(known, ClassOf(role));
        }
    }

    /// <summary>The class of a node.</summary>
    /// <remarks>0 V bonded to the protective conductor on purpose (PELV) is one metal with it; its other conductors still count as 0 V.</remarks>
    public NetClass Of(int node) =>
        _classOfNet[_nets.Of(node)] is not NetClass.ProtectiveEarth and var other ? other
        : _protectiveNets.Contains(_protective.Of(node)) ? NetClass.ProtectiveEarth
        : NetClass.ZeroVolt;

    /// <summary>True when two nodes are the same metal.</summary>
    public bool AreSame(int a, int b) => _nets.Of(a) == _nets.Of(b);

    private static bool IsOtherConductor(WiringNetwork wiring, NetworkElement element) =>
        element.Kind == ElementKind.Copper
        && wiring.Design.Conductors.First(conductor => conductor.Id == element.Subject).Colour != ConductorColour.GreenYellow;

    private static bool IsProtective(WiringNetwork wiring, NetworkNode node) =>
        node.Kind == NodeKind.Terminal
        && wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Role == TerminalRole.ProtectiveEarth;

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
