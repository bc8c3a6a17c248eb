namespace Proveout.Engine.Electrical;

/// <summary>Walks along metal in one state of the machine.</summary>
internal sealed class MetalWalk
{
    private readonly bool[] _isPlace;
    private readonly List<int>[] _neighbours;
    private readonly int[] _elementCount;
    private readonly int[] _farthest;
    private readonly int[] _reachedFrom;
    private readonly Queue<int> _queue = new();

    /// <summary>Prepares the walk.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="conducts">Which elements carry current in this state.</param>
    /// <param name="isPlace">Which nodes a lead can touch.</param>
    public MetalWalk(WiringNetwork wiring, Func<NetworkElement, bool> conducts, bool[] isPlace)
    {
        _isPlace = isPlace;
        _neighbours = [.. wiring.Nodes.Select(_ => new List<int>())];
        _elementCount = new int[wiring.Nodes.Count];
        _farthest = [.. Enumerable.Repeat(-1, wiring.Nodes.Count)];
        _reachedFrom = [.. Enumerable.Repeat(-1, wiring.Nodes.Count)];
        foreach (var element in wiring.Elements)
        {
            _elementCount[element.A]++;
            _elementCount[element.B]++;
            if (!element.IsMetal || !conducts(element))
                continue;
            _neighbours[element.A].Add(element.B);
            _neighbours[element.B].Add(element.A);
        }
    }

    /// <summary>Number of elements that end at a node.</summary>
    public int ElementCountAt(int node) => _elementCount[node];

    /// <summary>The place most elements away from a node along metal; the node itself when there is no other.</summary>
    public int FarthestFrom(int start)
    {
        if (_farthest[start] >= 0)
            return _farthest[start];
        var last = start;
        Reach(start, start);
        while (_queue.TryDequeue(out var node))
        {
            if (_isPlace[node])
                last = node;
            foreach (var next in _neighbours[node])
                Reach(next, start);
        }

        return _farthest[start] = last;
    }

    private void Reach(int node, int start)
    {
        if (_reachedFrom[node] == start)
            return;
        _reachedFrom[node] = start;
        _queue.Enqueue(node);
    }
}
