using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The wiring of a machine as a network: every terminal, plug contact and conductor end a node, everything between them an element.</summary>
public sealed class WiringNetwork
{
    private readonly Dictionary<(NodeKind Kind, string Subject, string Place), int> _indexOf;
    private readonly Lazy<NetworkElement[][]> _elementsAt;
    private readonly Lazy<ILookup<(string, string), NetworkElement>> _contactsOf;

    internal WiringNetwork(MachineDesign design, IReadOnlyList<NetworkNode> nodes, IReadOnlyList<NetworkElement> elements)
    {
        Design = design;
        Nodes = nodes;
        Elements = elements;
        _indexOf = nodes
            .Where(node => node.Kind != NodeKind.ConductorEnd)
            .ToDictionary(node => (node.Kind, node.Subject, node.Place), node => node.Index);
        _elementsAt = new(ByNode);
        _contactsOf = new(() => elements.Where(element => element.Part is Contact).ToLookup(element => (element.Subject, ((Contact)element.Part!).Control)));
    }

    /// <summary>The machine it was made from.</summary>
    public MachineDesign Design { get; }

    /// <summary>Its nodes, by number.</summary>
    public IReadOnlyList<NetworkNode> Nodes { get; }

    /// <summary>Its elements, by number.</summary>
    public IReadOnlyList<NetworkElement> Elements { get; }

    /// <summary>The elements that end at a node.</summary>
    internal NetworkElement[] ElementsAt(int node) => _elementsAt.Value[node];

    /// <summary>The contacts that a control of a part moves.</summary>
    internal IEnumerable<NetworkElement> ContactsOf(string part, string control) => _contactsOf.Value[(part, control)];

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

    private NetworkElement[][] ByNode()
    {
        var at = Elements.SelectMany(element => new[] { (Node: element.A, element), (Node: element.B, element) }).ToLookup(item => item.Node, item => item.element);
        return [.. Nodes.Select(node => at[node.Index].ToArray())];
    }
}
