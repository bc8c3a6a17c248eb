using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The wiring of a machine as a network: every terminal, plug contact and conductor end a node, everything between them an element.</summary>
public sealed class WiringNetwork
{
    private readonly Dictionary<(NodeKind Kind, string Subject, string Place), int> _indexOf;

    internal WiringNetwork(MachineDesign design, IReadOnlyList<NetworkNode> nodes, IReadOnlyList<NetworkElement> elements)
    {
        Design = design;
        Nodes = nodes;
        Elements = elements;
        _indexOf = nodes
            .Where(node => node.Kind != NodeKind.ConductorEnd)
            .ToDictionary(node => (node.Kind, node.Subject, node.Place), node => node.Index);
    }

    /// <summary>The machine it was made from.</summary>
    public MachineDesign Design { get; }

    /// <summary>Its nodes, by number.</summary>
    public IReadOnlyList<NetworkNode> Nodes { get; }

    /// <summary>Its elements, by number.</summary>
    public IReadOnlyList<NetworkElement> Elements { get; }

    /// <summary>The node of a terminal; on a pluggable connector, of its pin.</summary>
    /// <exception cref="KeyNotFoundException">There is no such terminal.</exception>
    public int TerminalNode(TerminalReference terminal) => _indexOf[(NodeKind.Terminal, terminal.Part, terminal.Terminal)];

    /// <summary>The node that a conductor's joint lands on: the plug's contact where there is a plug, else the terminal itself.</summary>
    /// <exception cref="KeyNotFoundException">There is no such terminal.</exception>
    public int LandingNode(TerminalReference terminal) =>
        _indexOf.TryGetValue((NodeKind.PlugContact, terminal.Part, terminal.Terminal), out var contact) ? contact : TerminalNode(terminal);

    /// <summary>The node of a terminal or inner node of a part.</summary>
    /// <exception cref="KeyNotFoundException">There is no such node.</exception>
    public int PartNode(string part, string node) =>
        _indexOf.TryGetValue((NodeKind.Terminal, part, node), out var terminal) ? terminal : _indexOf[(NodeKind.Inside, part, node)];
}
