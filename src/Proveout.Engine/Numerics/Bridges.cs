namespace Proveout.Engine.Numerics;

/// <summary>
/// Resistors whose removal parts an island, what hangs below each, and the blocks that single nodes join; every island is a tree of depth-first search from its anchor.
/// </summary>
/// <remarks>
/// Tarjan, Information Processing Letters 2 (1974) 160-161; blocks: Hopcroft and Tarjan, Communications of the ACM 16 (1973) 372-378. What hangs below a bridge is a run of consecutive numbers in the order of
/// the search, so that one comparison tells on which side of it a node lies.
/// </remarks>
internal sealed class Bridges
{
    private readonly ResistorNetwork _network;
    private readonly int[] _number;
    private readonly int[] _end;
    private readonly int[] _lowest;
    private readonly int[] _nodeAt;
    private readonly int[] _below;
    private readonly int[] _above;
    private readonly int[] _edgeAbove;
    private readonly int[] _block;
    private readonly int[] _place;
    private readonly int[] _depth;
    private readonly int[] _sizes;

    /// <summary>Searches a network.</summary>
    public Bridges(ResistorNetwork network)
    {
        _network = network;
        _number = new int[network.NodeCount];
        _end = new int[network.NodeCount];
        _lowest = new int[network.NodeCount];
        _nodeAt = new int[network.NodeCount];
        _below = new int[network.EdgeCount];
        Array.Fill(_number, -1);
        Array.Fill(_below, -1);
        var next = 0;
        _above = new int[network.NodeCount];
        _edgeAbove = new int[network.NodeCount];
        for (var island = 0; island < network.Islands.Count; island++)
            Search(network.AnchorOf(island), ref next);
        (_block, _place) = (new int[network.NodeCount], new int[network.NodeCount]);
        (_depth, _sizes) = (new int[network.NodeCount], new int[network.NodeCount]);
        FindBlocks();
    }

    /// <summary>Place of a node in the order of the search.</summary>
    public int NumberOf(int node) => _number[node];

    /// <summary>The node at a place in the order of the search.</summary>
    public int NodeAt(int number) => _nodeAt[number];

    /// <summary>All nodes in the order of the search: a node comes after those above it.</summary>
    public ReadOnlySpan<int> InOrder => _nodeAt;

    /// <summary>One past the place of the last node that hangs below a node.</summary>
    public int EndOf(int node) => _end[node];

    /// <summary>The node from which the search reached a node; -1 for an anchor.</summary>
    public int Above(int node) => _above[node];

    /// <summary>The resistor by which the search reached a node; -1 for an anchor.</summary>
    public int EdgeAbove(int node) => _edgeAbove[node];

    /// <summary>The node just below a bridge; -1 when the resistor is not a bridge.</summary>
    public int Below(int edge) => _below[edge];

    /// <summary>The block that a node and the node above it in the search are in, by its first node below the top; -1 for an anchor.</summary>
    /// <remarks>A block is a bridge, or resistors of which any two lie on a loop that passes no node twice; blocks of an island have single nodes in common.</remarks>
    public int BlockOf(int node) => _block[node];

    /// <summary>The block that a resistor is in.</summary>
    public int BlockOfEdge(int edge) => _network.EdgeOf(edge) is var ends && _number[ends.A] > _number[ends.B] ? _block[ends.A] : _block[ends.B];

    /// <summary>The node of a block that the search reached first.</summary>
    public int TopOf(int block) => _above[block];

    /// <summary>Number of blocks on the way from a node to the anchor of its island.</summary>
    public int DepthOf(int node) => _depth[node];

    /// <summary>Number of nodes of a block beside its top.</summary>
    public int SizeOf(int block) => _sizes[block];

    /// <summary>Place of a node among those of a block that it is in, from 1 in the order of the search; 0 for the top.</summary>
    public int PlaceIn(int block, int node) => _block[node] == block ? _place[node] : 0;

    /// <summary>Where what stands at each place begins in a list that is sorted by place; one more for the end.</summary>
    /// <param name="places">The place of each in the order of the search.</param>
    public int[] FirstAt(IEnumerable<int> places)
    {
        var firstAt = new int[_nodeAt.Length + 1];
        foreach (var place in places)
            firstAt[place + 1]++;
        for (var place = 1; place < firstAt.Length; place++)
            firstAt[place] += firstAt[place - 1];
        return firstAt;
    }

    // From no node of a block but its top a loop leads above the top.
    private void FindBlocks()
    {
        foreach (var node in _nodeAt)
        {
            _block[node] = _above[node] < 0 ? -1 : _lowest[node] >= _number[_above[node]] ? node : _block[_above[node]];
            if (_block[node] >= 0)
                (_place[node], _depth[node]) = (++_sizes[_block[node]], _depth[_above[_block[node]]] + 1);
        }
    }

    private void Search(int root, ref int next)
    {
        var path = new Stack<(int Node, int Edge, int Step)>();
        Enter(root, -1, ref next);
        path.Push((root, -1, 0));
        while (path.TryPop(out var at))
        {
            var (node, edge, step) = at;
            var steps = _network.StepsFrom(node);
            if (step == steps.Length)
            {
                Leave(node, edge, next);
                continue;
            }

            path.Push((node, edge, step + 1));
            var (onward, other) = steps[step];
            if (_number[other] < 0)
            {
                Enter(other, node, ref next);
                path.Push((other, onward, 0));
            }
            else if (onward != edge)
            {
                _lowest[node] = Math.Min(_lowest[node], _number[other]);
            }
        }
    }

    private void Enter(int node, int above, ref int next)
    {
        _above[node] = above;
        _number[node] = _lowest[node] = next;
        _nodeAt[next++] = node;
    }

    private void Leave(int node, int edge, int next)
    {
        _end[node] = next;
        _edgeAbove[node] = edge;
        if (edge < 0)
            return;
        if (_lowest[node] == _number[node])
            _below[edge] = node;
        var ends = _network.EdgeOf(edge);
        var above = ends.A == node ? ends.B : ends.A;
        _lowest[above] = Math.Min(_lowest[above], _lowest[node]);
    }
}
