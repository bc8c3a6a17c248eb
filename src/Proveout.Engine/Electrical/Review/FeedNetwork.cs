using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The elements that carry a supply's current: metal, fuses, contacts in whatever position, and electronic switches.</summary>
/// <remarks>
/// An electronic switch is seen by what a dead meter sees of it: insulation between two line terminals of one part (solid-state relay), or a body
/// diode from inside a part to one of its outputs (a transistor in the minus lead).
/// </remarks>
internal sealed class FeedNetwork
{
    private readonly WiringNetwork _wiring;
    private readonly (NetworkElement Element, int Other)[][] _steps;

    public FeedNetwork(WiringNetwork wiring)
    {
        _wiring = wiring;
        var steps = wiring.Elements
            .Where(Carries)
            .SelectMany(element => new[] { (element.A, (element, element.B)), (element.B, (element, element.A)) })
            .ToLookup(step => step.Item1, step => step.Item2);
        _steps = [.. wiring.Nodes.Select(node => steps[node.Index].ToArray())];
    }

    /// <summary>True when an element carries a supply's current.</summary>
    public bool Carries(NetworkElement element) => element.IsMetal || IsElectronicSwitch(element);

    /// <summary>What is reached from a node, each node on the way whose smallest fuse is largest.</summary>
    public FuseReach From(int start, double limitAmperes)
    {
        var reach = new FuseReach(limitAmperes);
        reach.Start(start);
        var queue = new PriorityQueue<int, double>([(start, -limitAmperes)]);
        while (queue.TryDequeue(out var node, out _))
            foreach (var (element, other) in _steps[node])
                if (reach.Reach(other, node, element.Index, RatingOf(element)))
                    queue.Enqueue(other, -reach.AmperesAt(other));
        return reach;
    }

    /// <summary>Nodes that hang together with one, some elements left out.</summary>
    public IReadOnlySet<int> Joined(int start, Func<NetworkElement, bool> leftOut)
    {
        var joined = new HashSet<int> { start };
        var queue = new Queue<int>(joined);
        while (queue.TryDequeue(out var node))
            foreach (var (element, other) in _steps[node])
                if (!leftOut(element) && joined.Add(other))
                    queue.Enqueue(other);
        return joined;
    }

    private static double RatingOf(NetworkElement element) => (element.Part as Fuse)?.Rating?.Amperes ?? double.PositiveInfinity;

    private bool IsElectronicSwitch(NetworkElement element) => element.Part switch
    {
        Insulation => RoleOf(element.A) == TerminalRole.Line && RoleOf(element.B) == TerminalRole.Line,
        Diode => RoleOf(element.B) == TerminalRole.Output && RoleOf(element.A) != TerminalRole.Output,
        _ => false,
    };

    private TerminalRole? RoleOf(int node) =>
        _wiring.Nodes[node] is { Kind: NodeKind.Terminal } at ? _wiring.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))?.Role : null;
}
