namespace Proveout.Engine.Electrical;

/// <summary>Looks for paths of little resistance between two leads, so that the reading stays low. One thread's own.</summary>
/// <remarks>
/// Taking all else away raises a resistance (Rayleigh), and so does parting paths where they meet; so the reading is at most that of some
/// paths that share no resistor, side by side. Whatever lowers a resistance, or adds one, only lowers it further; so only what raises a
/// resistance of the paths can bring the reading above that.
/// </remarks>
internal sealed class PathGuard(GuardGraph graph)
{
    private const int MostPaths = 4;
    private const double Rounding = 1e-9;

    private readonly int[] _stamp = new int[graph.Limit.Network.NodeCount];
    private readonly double[] _ohms = new double[graph.Limit.Network.NodeCount];
    private readonly (int Edge, int Before)[] _by = new (int, int)[graph.Limit.Network.NodeCount];
    private readonly PriorityQueue<int, double> _queue = new();
    private readonly List<(int Edge, double PathOhms)> _edges = [];
    private int _turn;
    private double _slackSiemens;

    /// <summary>Finds paths that together have at most so many ohms; false when there are none of a few.</summary>
    public bool TryFind(int from, int to, double mostOhms)
    {
        _edges.Clear();
        var siemens = 0.0;
        for (var count = 0; count < MostPaths && siemens * mostOhms < 1; count++)
        {
            if (!TryReach(from, to, count == 0 ? mostOhms : MostPaths * mostOhms) && (count > 0 || !TryReach(from, to, MostPaths * mostOhms)))
                return false;
            var ohms = _ohms[to] * (1 + Rounding);
            Trace(from, to, ohms);
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
            if (edge >= 0)
                foreach (var (fault, added) in graph.Limit.RaisesOf(edge))
                    if (((1 / pathOhms) - (1 / (pathOhms + added))) * together * graph.Limit.ChangesOf(fault).Length > _slackSiemens)
                        faults.Add(fault);
    }

    // Dijkstra, Numerische Mathematik 1 (1959) 269-271.
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
                if (ohms + (1 / siemens) is var next && next <= mostOhms && (_stamp[other] != _turn || next < _ohms[other]) && IsFree(edge))
                    Reach(other, next, (edge, node));
        }

        return false;
    }

    private bool IsFree(int edge)
    {
        foreach (var (used, _) in _edges)
            if (used == edge)
                return false;
        return true;
    }

    private void Reach(int node, double ohms, (int, int) by)
    {
        (_stamp[node], _ohms[node], _by[node]) = (_turn, ohms, by);
        _queue.Enqueue(node, ohms);
    }

    private void Trace(int from, int to, double pathOhms)
    {
        for (var node = to; node != from; node = _by[node].Before)
            _edges.Add((_by[node].Edge, pathOhms));
    }
}
