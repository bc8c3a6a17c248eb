namespace Proveout.Engine.Numerics;

/// <summary>Which ports a change of a network can alter, found in the graph without arithmetic.</summary>
/// <remarks>
/// Take every bridge as an edge and every mesh, which is what hangs together without bridges, as a node: that is a tree. A current that enters at one
/// end of a change and leaves at another flows only along the way between them in this tree, so a port notices only when its own way has a bridge, or a
/// mesh of more than one node, in common with that. Most wiring is bridges, and most ways are short.
/// </remarks>
internal sealed class PortPaths
{
    private const int BitsAWord = 64;

    private readonly Bridges _bridges;
    private readonly Islands _islands;
    private readonly int[][] _acrossBridge;
    private readonly int[][] _throughMesh;

    /// <summary>Lists the ports of each bridge and each mesh.</summary>
    public PortPaths(Ports ports)
    {
        (_bridges, _islands) = (ports.Network.Bridges, ports.Network.Islands);
        var acrossBridge = new List<int>?[ports.Network.NodeCount];
        var throughMesh = new List<int>?[ports.Network.NodeCount];
        for (var port = 0; port < ports.Pairs.Length; port++)
            if (ports.IsOneIsland(port))
                foreach (var (top, isBridge) in Way(ports.Nodes[ports.Pairs[port].A], ports.Nodes[ports.Pairs[port].B]))
                    if (isBridge)
                        (acrossBridge[top] ??= []).Add(port);
                    else if (!_bridges.IsAlone(top))
                        (throughMesh[top] ??= []).Add(port);
        _acrossBridge = Array.ConvertAll(acrossBridge, list => list?.ToArray() ?? []);
        _throughMesh = Array.ConvertAll(throughMesh, list => list?.ToArray() ?? []);
    }

    /// <summary>Sets the bits of the ports within one island that changes can alter.</summary>
    public void Add(List<EdgeChange> changes, Span<ulong> mask)
    {
        Span<int> firstOf = stackalloc int[2 * changes.Count];
        var islands = 0;
        foreach (var change in changes)
        {
            Reach(change.A, firstOf, ref islands, mask);
            Reach(change.B, firstOf, ref islands, mask);
        }
    }

    // The ways from one node of an island to each of the others cover the ways between any two of them.
    private void Reach(int node, Span<int> firstOf, ref int islands, Span<ulong> mask)
    {
        var first = 0;
        while (first < islands && _islands.Of(firstOf[first]) != _islands.Of(node))
            first++;
        if (first == islands)
            firstOf[islands++] = node;
        foreach (var (top, isBridge) in Way(firstOf[first], node))
            foreach (var port in isBridge ? _acrossBridge[top] : _throughMesh[top])
                mask[port / BitsAWord] |= 1UL << (port % BitsAWord);
    }

    private WayUp Way(int one, int other) => new(_bridges, one, other);

    // Of two meshes the one found later in the search does not lie above the other: it is left by the bridge above it.
    private struct WayUp(Bridges bridges, int one, int other)
    {
        private int _one = bridges.TopOf(one);
        private int _other = bridges.TopOf(other);
        private bool _atBridge;
        private bool _isDone;

        public (int Top, bool IsBridge) Current { get; private set; }

        public readonly WayUp GetEnumerator() => this;

        public bool MoveNext()
        {
            if (_isDone)
                return false;
            if (bridges.NumberOf(_one) < bridges.NumberOf(_other))
                (_one, _other) = (_other, _one);
            Current = (_one, _atBridge);
            if (_atBridge)
                _one = bridges.TopOf(bridges.Above(_one));
            else
                _isDone = _one == _other;
            _atBridge = !_atBridge;
            return true;
        }
    }
}
