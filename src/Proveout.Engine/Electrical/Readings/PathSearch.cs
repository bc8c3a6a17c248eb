using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Finds the way of least nominal resistance between two nodes (Dijkstra, Numerische Mathematik 1, 1959, 269-271).</summary>
/// <remarks>
/// A junction costs more than any resistance that a meter shows, one that blocks more than any number of junctions, and insulation more still: the
/// way found passes them only where there is no other.
/// </remarks>
internal sealed class PathSearch
{
    private const double JunctionCost = 1e10;
    private const double BlockedCost = 1e13;
    private const double InsulationCost = 1e16;

    private readonly WiringNetwork _wiring;
    private readonly (int Element, int Other)[][] _steps;

    public PathSearch(WiringNetwork wiring, Func<NetworkElement, bool> conducts)
    {
        _wiring = wiring;
        var steps = new List<(int, int)>[wiring.Nodes.Count];
        for (var node = 0; node < steps.Length; node++)
            steps[node] = [];
        foreach (var element in wiring.Elements.Where(conducts))
        {
            steps[element.A].Add((element.Index, element.B));
            steps[element.B].Add((element.Index, element.A));
        }

        _steps = [.. steps.Select(list => list.ToArray())];
    }

    public static bool IsJunction(NetworkElement element) => element.Part is Diode;

    public static bool IsInsulation(NetworkElement element) => element.Part is Insulation;

    /// <summary>The way of least resistance, or null when nothing joins the two nodes.</summary>
    /// <param name="from">Node of the red lead.</param>
    /// <param name="to">Node of the black lead.</param>
    /// <param name="leftOut">Elements that the way must not use.</param>
    public ReadingPath? Shortest(int from, int to, Func<NetworkElement, bool> leftOut)
    {
        var least = new Dictionary<int, double> { [from] = 0 };
        var cameBy = new Dictionary<int, (int Node, NetworkElement Element)>();
        var queue = new PriorityQueue<int, double>([(from, 0)]);
        while (queue.TryDequeue(out var node, out var cost))
        {
            if (node == to)
                return Trace(from, to, cameBy);
            if (cost > least[node])
                continue;
            foreach (var (index, other) in _steps[node])
            {
                var element = _wiring.Elements[index];
                var reached = cost + Cost(element, node);
                if (leftOut(element) || (least.TryGetValue(other, out var known) && known <= reached))
                    continue;
                least[other] = reached;
                cameBy[other] = (node, element);
                queue.Enqueue(other, reached);
            }
        }

        return null;
    }

    private static double Cost(NetworkElement element, int from) => element.Part switch
    {
        Diode => element.A == from ? JunctionCost : BlockedCost,
        Insulation => InsulationCost,
        _ => element.NominalOhms,
    };

    private static ReadingPath Trace(int from, int to, Dictionary<int, (int Node, NetworkElement Element)> cameBy)
    {
        var elements = new List<NetworkElement>();
        var nodes = new List<int> { to };
        for (var node = to; node != from; node = nodes[^1])
        {
            elements.Add(cameBy[node].Element);
            nodes.Add(cameBy[node].Node);
        }

        elements.Reverse();
        nodes.Reverse();
        return new ReadingPath(elements, nodes);
    }
}
