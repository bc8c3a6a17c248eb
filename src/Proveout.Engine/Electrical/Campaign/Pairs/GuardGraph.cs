using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>A network at one limit with a few changes, as a graph that is walked. One thread's own.</summary>
internal sealed class GuardGraph
{
    private readonly ResistorNetwork _network;
    private readonly double[] _changedTo;
    private readonly List<int> _changedEdges = [];
    private readonly List<Edge> _added = [];
    private readonly bool[] _hasAdded;
    private readonly int[] _onWay;
    private readonly List<int> _firstOfIsland = [];
    private (int From, int To)? _way;
    private int _wayTurn;
    private readonly List<(int Edge, int Other, double Siemens)> _steps = [];

    /// <summary>Starts from the network of a limit.</summary>
    public GuardGraph(PairLimit limit)
    {
        Limit = limit;
        _network = limit.Network;
        _changedTo = new double[_network.EdgeCount];
        Array.Fill(_changedTo, double.NaN);
        _hasAdded = new bool[_network.NodeCount];
        _onWay = new int[_network.NodeCount];
    }

    /// <summary>The limit.</summary>
    public PairLimit Limit { get; }

    /// <summary>Makes changes in place of those before.</summary>
    public void Apply(ReadOnlySpan<EdgeChange> changes)
    {
        foreach (var edge in _changedEdges)
            _changedTo[edge] = double.NaN;
        foreach (var edge in _added)
            _hasAdded[edge.A] = _hasAdded[edge.B] = false;
        _way = null;
        _changedEdges.Clear();
        _added.Clear();
        foreach (var change in changes)
            Add(change);
    }

    /// <summary>True for a resistor that a change added; those have the numbers after the network's own.</summary>
    public bool IsAdded(int edge) => edge >= _network.EdgeCount;

    /// <summary>The resistors at a node that carry current. Valid until the next call.</summary>
    public List<(int Edge, int Other, double Siemens)> StepsFrom(int node)
    {
        _steps.Clear();
        foreach (var (edge, other) in _network.StepsFrom(node))
        {
            if (SiemensOf(edge) is > 0 and var siemens)
                _steps.Add((edge, other, siemens));
        }

        if (_hasAdded[node])
            foreach (var (index, edge) in _added.Index())
                if (edge.A == node || edge.B == node)
                    _steps.Add((_network.EdgeCount + index, edge.A == node ? edge.B : edge.A, edge.Conductance));
        return _steps;
    }

    /// <summary>Conductance of a resistor of the network in siemens; zero when a change took it away.</summary>
    public double SiemensOf(int edge) => double.IsNaN(_changedTo[edge]) ? _network.EdgeOf(edge).Conductance : _changedTo[edge];

    /// <summary>Takes two nodes for <see cref="IsOnWay"/>.</summary>
    /// <remarks>
    /// A way that passes no node twice keeps, between what changes added, to the blocks on the way in the tree of blocks: so nothing that hangs beside them need be walked.
    /// </remarks>
    public void TakeWay(int from, int to)
    {
        if (_way == (from, to))
            return;
        _way = (from, to);
        _wayTurn++;
        _firstOfIsland.Clear();
        Mark(from);
        Mark(to);
        foreach (var edge in _added)
        {
            Mark(edge.A);
            Mark(edge.B);
        }
    }

    /// <summary>True when a way between the nodes taken last may pass a resistor.</summary>
    public bool IsOnWay(int edge) => IsAdded(edge) || _onWay[_network.Bridges.BlockOfEdge(edge)] == _wayTurn;

    // The ways from one node of an island to each of the others cover the ways between any two of them.
    private void Mark(int node)
    {
        foreach (var first in _firstOfIsland)
            if (_network.Islands.Of(first) == _network.Islands.Of(node))
            {
                foreach (var block in new BlockWay(_network.Bridges, first, node))
                    _onWay[block] = _wayTurn;
                return;
            }

        _firstOfIsland.Add(node);
    }

    private void Add(in EdgeChange change)
    {
        if (change.Edge < 0)
        {
            _added.Add(new Edge(change.A, change.B, (double)change.DeltaConductance));
            _hasAdded[change.A] = _hasAdded[change.B] = true;
            return;
        }

        _changedEdges.Add(change.Edge);
        _changedTo[change.Edge] = change.TakesAway ? 0 : (double)(_network.EdgeOf(change.Edge).Conductance + change.DeltaConductance);
    }
}
