namespace Proveout.Engine.Electrical;

/// <summary>Looks for several cuts between two leads, one beyond the other, that together keep the reading high. One thread's own.</summary>
/// <remarks>
/// Cuts that share no resistor stand in series: the reading is at least the sum of one over the conductance across each (Nash-Williams,
/// Proceedings of the Cambridge Philosophical Society 55 (1959) 181-194; it is Rayleigh's law for joining all nodes between two cuts). The
/// layers are pieces of metal: what good conductors join is one layer, what leaves it is a cut.
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
    private readonly List<int> _next = [];
    private int _turn;

    /// <summary>Lays layers round one node that do not reach the other, until the cuts between them make up some ohms.</summary>
    public bool TryFind(int from, int to, double leastOhms)
    {
        _turn++;
        _nodes.Clear();
        _next.Clear();
        _next.Add(from);
        var ohms = 0.0;
        for (var layer = 0; layer < MostLayers && _next.Count > 0; layer++)
        {
            var first = _nodes.Count;
            if (!Fill(layer, MetalShare / leastOhms) || IsInside(to))
                return false;
            ohms += 1 / (Leaving(first) * Rounding);
            if (ohms >= leastOhms)
                return true;
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

    // Puts what the last cut leads to, with all the metal that hangs on it, into a layer.
    private bool Fill(int layer, double metalSiemens)
    {
        var first = _nodes.Count;
        foreach (var node in _next)
            Take(node, layer);
        for (var index = first; index < _nodes.Count; index++)
            foreach (var (_, other, siemens) in graph.StepsFrom(_nodes[index]))
                if (siemens > metalSiemens)
                    Take(other, layer);
        return _nodes.Count <= MostNodes;
    }

    private void Take(int node, int layer)
    {
        if (IsInside(node))
            return;
        (_stamp[node], _layer[node]) = (_turn, layer);
        _nodes.Add(node);
    }

    // Only the last layer has neighbours outside: each cut takes all that it leads to into the next.
    private double Leaving(int first)
    {
        _next.Clear();
        var siemens = 0.0;
        for (var index = first; index < _nodes.Count; index++)
            foreach (var (_, other, conductance) in graph.StepsFrom(_nodes[index]))
                if (!IsInside(other))
                {
                    siemens += conductance;
                    _next.Add(other);
                }

        return siemens;
    }

    private bool IsInside(int node) => _stamp[node] == _turn;
}
