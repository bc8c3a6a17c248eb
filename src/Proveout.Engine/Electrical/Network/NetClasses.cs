using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The class of every node, from the roles of the terminals on its metal with all plugs mated.</summary>
/// <remarks>
/// What a net is by the terminals on it counts first; where none says, what it is joined to by contacts with the controls at rest: a conductor
/// behind the main switch carries line, but the signal of a stop switch is no 0 V because the switch happens to be closed.
/// </remarks>
internal sealed class NetClasses
{
    private readonly MetalNets _apart;
    private readonly MetalNets _joined;
    private readonly MetalNets _protective;
    private readonly NetClass?[] _classApart;
    private readonly NetClass?[] _classJoined;
    private readonly HashSet<int> _wired;
    private readonly HashSet<int> _protectiveNets;

    public NetClasses(WiringNetwork wiring)
    {
        var mated = new MachineState(false, []);
        bool Conducts(NetworkElement element) => StateNetwork.Conducts(wiring, mated, element);
        _joined = new MetalNets(wiring, Conducts);
        _apart = new MetalNets(wiring, element => element.Part is not Contact && Conducts(element));
        _classApart = ClassesOf(wiring, _apart);
        _classJoined = ClassesOf(wiring, _joined);
        _wired = [.. wiring.Elements.Where(element => element.Kind == ElementKind.Copper).Select(copper => _joined.Of(copper.A))];
        var greenYellow = wiring.Design.Conductors.Where(IsGreenYellow).Select(conductor => conductor.Id).ToHashSet(StringComparer.Ordinal);
        _protective = new MetalNets(
            wiring, element => Conducts(element) && (element.Kind != ElementKind.Copper || greenYellow.Contains(element.Subject)));
        _protectiveNets = [.. wiring.Nodes.Where(node => RoleOf(wiring, node) == TerminalRole.ProtectiveEarth).Select(node => _protective.Of(node.Index))];
    }

    /// <summary>The class of a node.</summary>
    /// <remarks>0 V bonded to the protective conductor on purpose (PELV) is one metal with it; its other conductors still count as 0 V.</remarks>
    public NetClass Of(int node)
    {
        if (!_wired.Contains(_joined.Of(node)))
            return NetClass.Spare;
        var found = _classApart[_apart.Of(node)] ?? _classJoined[_joined.Of(node)] ?? NetClass.Signal;
        return found == NetClass.ProtectiveEarth && !_protectiveNets.Contains(_protective.Of(node)) ? NetClass.ZeroVolt : found;
    }

    /// <summary>True when two nodes are the same metal whatever the switches do.</summary>
    public bool AreSame(int a, int b) => _apart.Of(a) == _apart.Of(b);

    private static NetClass?[] ClassesOf(WiringNetwork wiring, MetalNets nets)
    {
        var classes = new NetClass?[nets.Count];
        foreach (var node in wiring.Nodes)
            if (ClassOf(RoleOf(wiring, node)) is { } ofRole && !(classes[nets.Of(node.Index)] > ofRole))
                classes[nets.Of(node.Index)] = ofRole;
        return classes;
    }

    private static bool IsGreenYellow(Conductor conductor) => conductor.Colour == ConductorColour.GreenYellow;

    private static TerminalRole? RoleOf(WiringNetwork wiring, NetworkNode node) =>
        node.Kind == NodeKind.Terminal ? wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Role : null;

    private static NetClass? ClassOf(TerminalRole? role) => role switch
    {
        TerminalRole.ProtectiveEarth => NetClass.ProtectiveEarth,
        TerminalRole.Line => NetClass.Line,
        TerminalRole.Neutral => NetClass.Neutral,
        TerminalRole.Positive => NetClass.Positive,
        TerminalRole.ZeroVolt => NetClass.ZeroVolt,
        TerminalRole.Passive or null => null,
        _ => NetClass.Signal,
    };
}
