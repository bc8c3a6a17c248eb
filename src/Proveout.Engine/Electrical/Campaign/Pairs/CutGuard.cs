namespace Proveout.Engine.Electrical;

/// <summary>Looks for a set of nodes round one lead that little conductance leaves, so that the reading stays high. One thread's own.</summary>
/// <remarks>
/// Joining all nodes inside, and all outside, lowers a resistance (Rayleigh), so the reading is at least one over the conductance between
/// the two. Whatever raises a resistance only raises it further; so only what lowers one between an inside and an outside node can bring the
/// reading below that.
/// </remarks>
internal sealed class CutGuard(GuardGraph graph)
{
    // Doubles of one sign are summed; a thousand terms are right to a part in a trillion.
    private const double Rounding = 1 + 1e-9;

    private readonly int[] _stamp = new int[graph.Limit.Network.NodeCount];
    private readonly List<int> _inside = [];
    private readonly PriorityQueue<int, double> _frontier = new();
    private int _turn;

    /// <summary>True when the set found last holds a node.</summary>
    public bool Holds(int node) => _stamp[node] == _turn;

    /// <summary>Grows a set from one node that does not reach the other, until at most a conductance leaves it; false when there is none so small.</summary>
    public bool TryFind(int from, int to, double mostSiemens, int mostNodes)
    {
        _turn++;
        _inside.Clear();
        _frontier.Clear();
        Take(from);
        for (var checkAt = 1; _inside.Count <= mostNodes;)
        {
            Skip();
            var isNextLarge = _frontier.TryPeek(out var next, out var negative) && -negative > mostSiemens;
            if (!isNextLarge && (_frontier.Count == 0 || _inside.Count >= checkAt))
            {
                if (Leaving() * Rounding <= mostSiemens || _frontier.Count == 0)
                    return !Holds(to);
                checkAt = _inside.Count + (_inside.Count / 4) + 1;
            }

            if (next == to)
                return false;
            _frontier.Dequeue();
            Take(next);
        }

        return false;
    }

    /// <summary>Adds the faults that lower a resistance between inside and outside; a fault may be added more than once.</summary>
    public void AddCrossing(List<int> faults)
    {
        foreach (var node in _inside)
            foreach (var (fault, other) in graph.Limit.LowersAt(node))
                if (!Holds(other))
                    faults.Add(fault);
    }

    private void Take(int node)
    {
        _stamp[node] = _turn;
        _inside.Add(node);
        foreach (var (_, other, siemens) in graph.StepsFrom(node))
            if (!Holds(other))
                _frontier.Enqueue(other, -siemens);
    }

    private void Skip()
    {
        while (_frontier.TryPeek(out var node, out _) && Holds(node))
            _frontier.Dequeue();
    }

    private double Leaving()
    {
        var sum = 0.0;
        foreach (var node in _inside)
            foreach (var (_, other, siemens) in graph.StepsFrom(node))
                if (!Holds(other))
                    sum += siemens;
        return sum;
    }
}
