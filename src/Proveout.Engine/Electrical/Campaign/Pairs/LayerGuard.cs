namespace Proveout.Engine.Electrical;

/// <summary>Looks for several cuts between two leads that together keep the reading high. One thread's own.</summary>
/// <remarks>
/// Cuts that share no resistor stand in series: the reading is at least the sum of one over the conductance across each (Nash-Williams,
/// Proceedings of the Cambridge Philosophical Society 55 (1959) 181-194; it is Rayleigh's law for joining all nodes between two cuts). The
/// layers are pieces of metal: what good conductors join is one layer, with all that hangs on it and leads no further; what leaves it is a cut.
/// </remarks>
internal sealed class LayerGuard(GuardGraph graph)
{
    private const int MostLayers = 6;
    private const int MostNodes = 2000;
    private const double MetalShare = 20;
    private const double Rounding = 1 + 1e-9;

    private readonly int[] _layer = new int[graph.Limit.Network.NodeCount];
    private readonly int[] _stamp = new int[graph.Limit.Network.NodeCount];
    private readonly List<int> _nodes = [];
    private readonly List<int>[] _next = [[], []];
    private readonly int[] _leadsOn = new int[graph.Limit.Network.NodeCount];
    private readonly Queue<int> _queue = new();
    private int _search;
    private int _turn;
    private int _to;

    /// <summary>Lays layers round both nodes in turn, which do not touch, until the cuts round them make up some ohms.</summary>
    public bool TryFind(int from, int to, double leastOhms)
    {
        _turn++;
        _to = to;
        _nodes.Clear();
        foreach (var next in _next)
            next.Clear();
        _next[0].Add(from);
        _next[1].Add(to);
        var ohms = 0.0;
        for (var layer = 0; layer < MostLayers; layer++)
        {
            var side = layer % 2;
            var first = _nodes.Count;
            if (!TryFill(layer, MetalShare / leastOhms) || !TryLeave(layer, first, out var siemens))
                return false;
            ohms += 1 / (siemens * Rounding);
            if (ohms >= leastOhms)
                return true;
            if (_next[side].Count == 0)
                return false;
        }

        return false;
    }

    /// <summary>Adds the faults that lower a resistance across a cut; a fault may be added more than once.</summary>
    public void AddCrossing(List<int> faults)
    {
        foreach (var node in _nodes)
            foreach (var (fault, other) in graph.Limit.LowersAt(node))
                if (!IsInside(other) || _layer[other] != _layer[node])
                    faults.Add(fault);
    }

    // Puts what the last cut of a side leads to, with all the metal that hangs on it, into a layer; false when it meets the other side.
    private bool TryFill(int layer, double metalSiemens)
    {
        var first = _nodes.Count;
        foreach (var node in _next[layer % 2])
            if (!TryTake(node, layer))
                return false;
        for (var index = first; index < _nodes.Count && _nodes.Count <= MostNodes; index++)
            foreach (var (_, other, siemens) in graph.StepsFrom(_nodes[index]))
                if (siemens > metalSiemens && !TryTake(other, layer))
                    return false;
        return _nodes.Count <= MostNodes;
    }

    private bool TryTake(int node, int layer)
    {
        // Metal from one lead to the other: there is no cut between them.
        if (node == _to && layer % 2 == 0)
            return false;
        if (IsInside(node))
            return _layer[node] % 2 == layer % 2;
        Take(node, layer);
        return true;
    }

    private void Take(int node, int layer)
    {
        (_stamp[node], _layer[node]) = (_turn, layer);
        _nodes.Add(node);
    }

    // Only the last layer of a side has neighbours outside: each cut takes all that it leads to into the next. A resistor from side to side
    // would count in two cuts.
    private bool TryLeave(int layer, int first, out double siemens)
    {
        var next = _next[layer % 2];
        next.Clear();
        siemens = 0.0;
        FindWhatLeadsOn(_next[1 - (layer % 2)]);
        for (var index = first; index < _nodes.Count; index++)
            foreach (var (_, other, conductance) in graph.StepsFrom(_nodes[index]))
                if (IsInside(other))
                {
                    if (_layer[other] % 2 != layer % 2)
                        return false;
                }
                else if (_leadsOn[other] == _search)
                {
                    siemens += conductance;
                    next.Add(other);
                }
                else
                {
                    Take(other, layer);
                }

        return true;
    }

    // All that lies between the two sides; nothing else carries a current from one to the other.
    private void FindWhatLeadsOn(List<int> beyondOtherSide)
    {
        _search++;
        foreach (var node in beyondOtherSide)
            Reach(node);
        while (_queue.TryDequeue(out var at))
            foreach (var (_, other, _) in graph.StepsFrom(at))
                Reach(other);
    }

    private void Reach(int node)
    {
        if (_leadsOn[node] == _search || IsInside(node))
            return;
        _leadsOn[node] = _search;
        _queue.Enqueue(node);
    }

    private bool IsInside(int node) => _stamp[node] == _turn;
}
