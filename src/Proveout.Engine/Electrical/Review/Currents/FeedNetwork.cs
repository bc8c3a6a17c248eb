using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The elements that carry a supply's current: metal, fuses, contacts in whatever position, and electronic switches.</summary>
/// <remarks>
/// An electronic switch is what its type says; where a type says nothing of its live circuit, it is seen by what a dead meter sees of it: insulation
/// between two line terminals of one part (solid-state relay), or a body diode from inside a part to one of its outputs (a transistor in the minus lead).
/// A green-yellow conductor carries no current in use, and is not counted.
/// </remarks>
internal sealed class FeedNetwork
{
    private const double ElectronicCost = 1e6;

    private readonly WiringNetwork _wiring;
    private readonly Dictionary<(string Part, string Node), int> _nodes;
    private readonly FeedStep[][] _steps;
    private readonly HashSet<(int Low, int High)> _switched;

    public FeedNetwork(WiringNetwork wiring, Dictionary<(string Part, string Node), int> nodes)
    {
        (_wiring, _nodes) = (wiring, nodes);
        var protective = wiring.Design.Conductors
            .Where(conductor => conductor.Colour == ConductorColour.GreenYellow)
            .Select(conductor => conductor.Id)
            .ToHashSet(StringComparer.Ordinal);
        Switches = [.. SwitchedPaths()];
        _switched = [.. Switches.Select(Ends)];
        var steps = new List<FeedStep>[wiring.Nodes.Count];
        for (var node = 0; node < steps.Length; node++)
            steps[node] = [];
        foreach (var element in wiring.Elements.Concat(Switches))
            if (Carries(element) && !(element.Kind == ElementKind.Copper && protective.Contains(element.Subject)))
            {
                steps[element.A].Add(new(element, element.B));
                steps[element.B].Add(new(element, element.A));
            }

        _steps = [.. steps.Select(list => list.ToArray())];
    }

    /// <summary>Electronic switches that part types describe, as elements after those of the wiring network.</summary>
    public IReadOnlyList<NetworkElement> Switches { get; }

    /// <summary>Where current can go from a node.</summary>
    public IReadOnlyList<FeedStep> From(int node) => _steps[node];

    /// <summary>True when an element carries a supply's current.</summary>
    public bool Carries(NetworkElement element) => element.IsMetal || element.Part is Contact or SwitchedPath || (!_switched.Contains(Ends(element)) && IsElectronicSwitch(element));

    /// <summary>What is reached from a node, each node on the way whose smallest fuse is largest.</summary>
    public FuseReach ReachFrom(int start, double limitAmperes)
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

    /// <summary>The ways of least resistance from a node to all that it reaches.</summary>
    public FeedTree WaysFrom(int start)
    {
        var tree = new FeedTree(start);
        var queue = new PriorityQueue<int, double>([(start, 0)]);
        while (queue.TryDequeue(out var node, out var cost))
            if (cost <= tree.CostOf(node))
                foreach (var (element, other) in _steps[node])
                    if (tree.Reach(other, node, element, cost + (element.IsMetal ? element.NominalOhms : ElectronicCost)))
                        queue.Enqueue(other, tree.CostOf(other));
        return tree;
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

    private static (int Low, int High) Ends(NetworkElement element) => (Math.Min(element.A, element.B), Math.Max(element.A, element.B));

    private static double RatingOf(NetworkElement element) =>
        element.Part is Fuse { Rating: { } rating, Curve: not FuseCurve.Thermal } ? rating.Amperes : double.PositiveInfinity;

    private IEnumerable<NetworkElement> SwitchedPaths()
    {
        var index = _wiring.Elements.Count;
        foreach (var part in _wiring.Design.Parts)
            foreach (var path in part.Type.Circuit.OfType<SwitchedPath>())
                if (_nodes.TryGetValue((part.Designation, path.A), out var a) && _nodes.TryGetValue((part.Designation, path.B), out var b))
                    yield return new(
                        index++, ElementKind.Inside, a, b, path.Value.Low.Ohms, path.Value.Nominal.Ohms, double.PositiveInfinity, part.Designation, path.Name, path);
    }

    private bool IsElectronicSwitch(NetworkElement element) => element.Part switch
    {
        Insulation => RoleOf(element.A) == TerminalRole.Line && RoleOf(element.B) == TerminalRole.Line,
        Diode => RoleOf(element.B) == TerminalRole.Output && RoleOf(element.A) != TerminalRole.Output,
        _ => false,
    };

    private TerminalRole? RoleOf(int node) =>
        _wiring.Nodes[node] is { Kind: NodeKind.Terminal } at ? _wiring.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))?.Role : null;
}
