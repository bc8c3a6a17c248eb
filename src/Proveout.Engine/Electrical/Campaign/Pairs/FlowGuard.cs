namespace Proveout.Engine.Electrical;

/// <summary>Looks for a current between two leads that takes several ways, which may share resistors, so that the reading stays low. One thread's own.</summary>
/// <remarks>
/// The reading is at most the sum of resistance times the square of its share of the current over all resistors, however one ampere is parted (Thomson's principle; Doyle and Snell, Random
/// Walks and Electric Networks, 1.3.5). Each way takes the same share, and each next one is that which adds least. Whatever lowers a resistance, or adds one, only lowers the reading
/// further; so only what raises a resistance that carries current can bring it above that.
/// </remarks>
internal sealed class FlowGuard(GuardGraph graph)
{
    private const int MostWays = 16;
    private const double Rounding = 1e-9;

    private readonly int[] _stamp = new int[graph.Limit.Network.NodeCount];
    private readonly double[] _ohms = new double[graph.Limit.Network.NodeCount];
    private readonly (int Edge, int Before)[] _by = new (int, int)[graph.Limit.Network.NodeCount];
    private readonly PriorityQueue<int, double> _queue = new();
    private readonly Dictionary<int, int> _ways = [];
    private int _turn;
    private int _count;
    private double _slackOhms;

    /// <summary>Finds ways that together have at most so many ohms; false when there are none of some.</summary>
    public bool TryFind(int from, int to, double mostOhms)
    {
        _ways.Clear();
        var ohms = 0.0;
        for (_count = 1; _count <= MostWays; _count++)
        {
            if (!TryReach(from, to, (MostWays * MostWays * mostOhms) - ohms))
                return false;
            ohms += _ohms[to];
            for (var node = to; node != from; node = _by[node].Before)
                _ways[_by[node].Edge] = _ways.GetValueOrDefault(_by[node].Edge) + 1;
            _slackOhms = mostOhms - (ohms * (1 + Rounding) / (_count * _count));
            if (_slackOhms >= 0)
                return true;
        }

        return false;
    }

    /// <summary>Adds the faults that may raise the reading above the ohms that were given; a fault may be added more than once.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="together">Number of faults that may be made together at most.</param>
    public void AddRaising(List<int> faults, int together)
    {
        foreach (var (edge, ways) in _ways)
            foreach (var (fault, added) in graph.Limit.RaisesOf(edge))
                if (added * ways * ways / (_count * _count) * together * graph.Limit.ChangesOf(fault).Length > _slackOhms)
                    faults.Add(fault);
    }

    // Dijkstra, Numerische Mathematik 1 (1959) 269-271. A resistor that carries n shares takes (n+1)² - n² times its ohms more with another. What faults add has no number.
    private bool TryReach(int from, int to, double mostOhms)
    {
        _turn++;
        _queue.Clear();
        Reach(from, 0, (-1, -1));
        while (_queue.TryDequeue(out var node, out var ohms))
        {
            if (node == to)
                return true;
            if (ohms > _ohms[node])
                continue;
            foreach (var (edge, other, siemens) in graph.StepsFrom(node))
                if (edge >= 0 && ohms + (((2 * _ways.GetValueOrDefault(edge)) + 1) / siemens) is var next && next <= mostOhms && (_stamp[other] != _turn || next < _ohms[other]))
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
