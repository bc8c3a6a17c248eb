namespace Proveout.Engine.Electrical;

/// <summary>Looks for a current between two leads that takes several ways, which may share resistors, so that the reading stays low. One thread's own.</summary>
/// <remarks>
/// The reading is at most the sum of resistance times the square of its share of the current over all resistors, however one ampere is parted (Thomson's principle; Doyle and Snell, Random
/// Walks and Electric Networks, 1.3.5). Each way takes the same share, and each next one is that which adds least. Whatever lowers a resistance, or adds one, only lowers the reading
/// further; so only what raises a resistance that carries current can bring it above that.
/// </remarks>
internal sealed class FlowGuard
{
    private const int MostWays = 16;
    private const double Rounding = 1e-9;

    private readonly GuardGraph _graph;
    private readonly LeastWay _way;
    private readonly List<int> _found = [];
    private readonly Dictionary<int, int> _shares = [];
    private int _count;
    private double _slackOhms;

    /// <summary>Prepares to look in a graph.</summary>
    public FlowGuard(GuardGraph graph)
    {
        _graph = graph;
        // A resistor that carries n shares takes (n+1)² - n² times its ohms more with another.
        _way = new LeastWay(graph, (edge, siemens) => ((2 * _shares.GetValueOrDefault(edge)) + 1) / siemens);
    }

    /// <summary>Finds ways that together have at most so many ohms; false when there are none of some.</summary>
    public bool TryFind(int from, int to, double mostOhms)
    {
        _shares.Clear();
        var ohms = 0.0;
        for (_count = 1; _count <= MostWays; _count++)
        {
            if (!_way.TryFind(from, to, (MostWays * MostWays * mostOhms) - ohms, _found, out var more))
                return false;
            ohms += more;
            foreach (var edge in _found)
                _shares[edge] = _shares.GetValueOrDefault(edge) + 1;
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
        foreach (var (edge, shares) in _shares.Where(item => !_graph.IsAdded(item.Key)))
            foreach (var (fault, added) in _graph.Limit.RaisesOf(edge))
                if (added * shares * shares / (_count * _count) * together * _graph.Limit.ChangesOf(fault).Length > _slackOhms)
                    faults.Add(fault);
    }
}
