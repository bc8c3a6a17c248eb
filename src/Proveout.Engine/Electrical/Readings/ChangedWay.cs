namespace Proveout.Engine.Electrical;

/// <summary>Finds the best single way from a red to a black lead under a fault. Reused from fault to fault by one thread.</summary>
/// <remarks>
/// The search runs from both leads (Pohl, Machine Intelligence 6 (1971) 127-140), and always on from that lead around which fewer nodes are reached: a fault often
/// leaves little around one of them, and then it is soon known that there is no way. The volts of the way found are summed from red to black.
/// </remarks>
internal sealed class ChangedWay(PathVolts paths)
{
    private readonly Side _fromRed = new(paths.NodeCount);
    private readonly Side _toBlack = new(paths.NodeCount);
    private readonly bool[] _isChanged = new bool[paths.ElementCount];
    private readonly List<Join> _joins = [];
    private IReadOnlyList<ElementChange> _changes = [];
    private double _best;
    private int _meeting;

    /// <summary>The most volts along the best way; infinite when there is none below what shows as over range, or below another limit.</summary>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    /// <param name="changes">What the fault does.</param>
    /// <param name="below">Volts from which on a way does not matter.</param>
    public double Volts(int red, int black, IReadOnlyList<ElementChange> changes, double below = double.PositiveInfinity)
    {
        Take(changes);
        (_best, _meeting) = (Math.Min(below, paths.OpenVolts), -1);
        _fromRed.Start(red);
        _toBlack.Start(black);
        while (_fromRed.LeastAhead + _toBlack.LeastAhead < _best)
            if (_fromRed.Count <= _toBlack.Count)
                Step(_fromRed, _toBlack, isBackward: false);
            else
                Step(_toBlack, _fromRed, isBackward: true);
        return _meeting < 0 ? double.PositiveInfinity : Sum();
    }

    /// <summary>The way in the machine as designed; its volts are infinite when there is none below what shows as over range.</summary>
    public VoltWay Designed(int red, int black) => Volts(red, black, []) is var volts && double.IsFinite(volts) ? new VoltWay(volts, Elements()) : VoltWay.None;

    // A fault is asked for many ports in turn, and at each for many elements.
    private void Take(IReadOnlyList<ElementChange> changes)
    {
        if (ReferenceEquals(changes, _changes))
            return;
        Mark(isChanged: false);
        _changes = changes;
        Mark(isChanged: true);
        _joins.Clear();
        foreach (var change in changes)
            if (change is Join join)
                _joins.Add(join);
    }

    private void Mark(bool isChanged)
    {
        foreach (var change in _changes)
            if (change.ChangedElement is { } element)
                _isChanged[element] = isChanged;
    }

    private void Step(Side side, Side other, bool isBackward)
    {
        if (!side.TryTake(out var node))
            return;
        foreach (var (element, next, own) in paths.StepsAt(node, isBackward))
            Reach(side, other, node, next, element, _isChanged[element] ? paths.VoltsOf(element, own, _changes) : own);
        foreach (var join in _joins)
            if (join.A == node || join.B == node)
                Reach(side, other, node, join.A == node ? join.B : join.A, -1, paths.VoltsOf(join));
    }

    private void Reach(Side side, Side other, int from, int to, int element, double own)
    {
        var onward = side.VoltsAt(from) + own;
        if (onward >= _best || !side.Reach(to, onward, new Origin(from, element, own)))
            return;
        if (onward + other.VoltsAt(to) is var whole && whole < _best)
            (_best, _meeting) = (whole, to);
    }

    private double Sum()
    {
        var volts = _fromRed.VoltsAt(_meeting);
        for (var node = _meeting; _toBlack.OriginOf(node) is { Node: >= 0 } origin; node = origin.Node)
            volts += origin.Volts;
        return volts >= paths.OpenVolts ? double.PositiveInfinity : volts;
    }

    private int[] Elements()
    {
        var elements = new List<int>();
        foreach (var side in new[] { _fromRed, _toBlack })
            for (var node = _meeting; side.OriginOf(node) is { Node: >= 0 } origin; node = origin.Node)
                elements.Add(origin.Element);
        return [.. elements];
    }

    // From where a node is reached, and along what; an element below zero stands for a contact that a fault makes.
    private readonly record struct Origin(int Node, int Element, double Volts);

    // What is reached from one lead.
    private sealed class Side
    {
        private readonly double[] _volts;
        private readonly Origin[] _origins;
        private readonly List<int> _reached = [];
        private readonly PriorityQueue<int, double> _queue = new();

        public Side(int nodeCount)
        {
            _volts = new double[nodeCount];
            _origins = new Origin[nodeCount];
            Array.Fill(_volts, double.PositiveInfinity);
        }

        public int Count => _reached.Count;

        // Infinite once nothing is left to go on from.
        public double LeastAhead => _queue.TryPeek(out _, out var volts) ? volts : double.PositiveInfinity;

        public double VoltsAt(int node) => _volts[node];

        public Origin OriginOf(int node) => _origins[node];

        public void Start(int node)
        {
            foreach (var reached in _reached)
                _volts[reached] = double.PositiveInfinity;
            _reached.Clear();
            _queue.Clear();
            Reach(node, 0, new Origin(-1, -1, 0));
        }

        public bool TryTake(out int node)
        {
            while (_queue.TryDequeue(out node, out var volts))
                if (volts <= _volts[node])
                    return true;
            return false;
        }

        public bool Reach(int node, double volts, Origin origin)
        {
            if (_volts[node] <= volts)
                return false;
            if (double.IsPositiveInfinity(_volts[node]))
                _reached.Add(node);
            (_volts[node], _origins[node]) = (volts, origin);
            _queue.Enqueue(node, volts);
            return true;
        }
    }
}
