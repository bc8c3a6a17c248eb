namespace Proveout.Engine.Electrical;

/// <summary>Finds the way of least resistance between two nodes, or of least of whatever resistors are counted as. One thread's own.</summary>
/// <remarks>Dijkstra, Numerische Mathematik 1 (1959) 269-271.</remarks>
/// <param name="graph">The graph.</param>
/// <param name="ohmsOf">What a resistor counts as, by its number and its conductance in siemens; infinite where it is not to be passed.</param>
internal sealed class LeastWay(GuardGraph graph, Func<int, double, double> ohmsOf)
{
    private readonly int[] _stamp = new int[graph.Limit.Network.NodeCount];
    private readonly double[] _ohms = new double[graph.Limit.Network.NodeCount];
    private readonly (int Edge, int Before)[] _by = new (int, int)[graph.Limit.Network.NodeCount];
    private readonly PriorityQueue<int, double> _queue = new();
    private int _turn;

    /// <summary>Finds a way; false when there is none of at most so many ohms.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other.</param>
    /// <param name="mostOhms">The most that it may count as.</param>
    /// <param name="edges">Takes its resistors, the last first.</param>
    /// <param name="ohms">What it counts as.</param>
    public bool TryFind(int from, int to, double mostOhms, List<int> edges, out double ohms)
    {
        _turn++;
        _queue.Clear();
        edges.Clear();
        graph.TakeWay(from, to);
        Reach(from, 0, (-1, -1));
        while (_queue.TryDequeue(out var node, out ohms))
        {
            if (node == to)
            {
                for (var at = to; at != from; at = _by[at].Before)
                    edges.Add(_by[at].Edge);
                return true;
            }

            if (ohms > _ohms[node])
                continue;
            foreach (var (edge, other, siemens) in graph.StepsFrom(node))
                if (graph.IsOnWay(edge) && ohms + ohmsOf(edge, siemens) is var next && next <= mostOhms && (_stamp[other] != _turn || next < _ohms[other]))
                    Reach(other, next, (edge, node));
        }

        return false;
    }

    private void Reach(int node, double ohms, (int, int) by)
    {
        (_stamp[node], _ohms[node], _by[node]) = (_turn, ohms, by);
        _queue.Enqueue(node, ohms);
    }
}
