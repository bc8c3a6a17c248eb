namespace Proveout.Engine.Electrical;

/// <summary>Looks for paths of little resistance between two leads, so that the reading stays low. One thread's own.</summary>
/// <remarks>
/// Taking all else away raises a resistance (Rayleigh), and so does parting paths where they meet; so the reading is at most that of some
/// paths that share no resistor, side by side. Whatever lowers a resistance, or adds one, only lowers it further; so only what raises a
/// resistance of the paths can bring the reading above that.
/// </remarks>
internal sealed class PathGuard
{
    private const int MostPaths = 4;
    private const double Rounding = 1e-9;

    private readonly GuardGraph _graph;
    private readonly LeastWay _way;
    private readonly List<int> _found = [];
    private readonly List<(int Edge, double PathOhms)> _edges = [];
    private readonly Dictionary<(int, int), int[]> _knownWays = [];
    private double _slackSiemens;

    /// <summary>Prepares to look in a graph.</summary>
    public PathGuard(GuardGraph graph)
    {
        _graph = graph;
        _way = new LeastWay(graph, (edge, siemens) => IsFree(edge) ? 1 / siemens : double.PositiveInfinity);
    }

    /// <summary>Finds paths that together have at most so many ohms; false when there are none of a few.</summary>
    public bool TryFind(int from, int to, double mostOhms)
    {
        _edges.Clear();
        var siemens = 0.0;
        for (var count = 0; count < MostPaths && siemens * mostOhms < 1; count++)
        {
            if (!(count == 0 ? TryFindFirst(from, to, mostOhms, out var ohms) : _way.TryFind(from, to, MostPaths * mostOhms, _found, out ohms)))
                return false;
            ohms *= 1 + Rounding;
            foreach (var edge in _found)
                _edges.Add((edge, ohms));
            siemens += 1 / ohms;
        }

        _slackSiemens = (siemens * (1 - Rounding)) - (1 / mostOhms);
        return _slackSiemens >= 0;
    }

    /// <summary>Adds the faults that may raise the paths above the ohms they were given; a fault may be added more than once.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="together">Number of faults that may be made together at most.</param>
    public void AddRaising(List<int> faults, int together)
    {
        foreach (var (edge, pathOhms) in _edges)
            if (!_graph.IsAdded(edge))
                foreach (var (fault, added) in _graph.Limit.RaisesOf(edge))
                    if (((1 / pathOhms) - (1 / (pathOhms + added))) * together * _graph.Limit.ChangesOf(fault).Length > _slackSiemens)
                        faults.Add(fault);
    }

    // A way that was the best under other changes is as good as any while it is short enough.
    private bool TryFindFirst(int from, int to, double mostOhms, out double ohms)
    {
        if (_knownWays.TryGetValue((from, to), out var known) && OhmsOf(known) is var knownOhms && double.IsFinite(knownOhms) && knownOhms * (1 + Rounding) <= mostOhms)
        {
            _found.Clear();
            _found.AddRange(known);
            ohms = knownOhms;
            return true;
        }

        if (!_way.TryFind(from, to, mostOhms, _found, out ohms) && !_way.TryFind(from, to, MostPaths * mostOhms, _found, out ohms))
            return false;
        if (known is null && !_found.Exists(_graph.IsAdded))
            _knownWays[(from, to)] = [.. _found];
        return true;
    }

    private double OhmsOf(int[] way)
    {
        var ohms = 0.0;
        foreach (var edge in way)
            ohms += 1 / _graph.SiemensOf(edge);
        return ohms;
    }

    private bool IsFree(int edge)
    {
        foreach (var (used, _) in _edges)
            if (used == edge)
                return false;
        return true;
    }
}
