namespace Proveout.Engine.Numerics;

/// <summary>Transfer resistances of a network, each island grounded at its anchor, from those of its blocks. Safe for use from several threads.</summary>
/// <remarks>
/// A current from a node to the anchor passes the blocks on the way one after the other, by the nodes that they share, so resistances add up along the way; two currents have in common
/// what they share of it, and in the block where they meet the transfer resistance of the nodes where they enter it (<see cref="Bridges"/>). So only blocks are ever factored, and most are
/// single resistors. Where two ways meet is found in a few steps along heavy paths (Sleator and Tarjan, Journal of Computer and System Sciences 26 (1983) 362-391).
/// </remarks>
internal sealed class BlockTree
{
    private readonly Bridges _bridges;
    private readonly LoopBlock?[] _blocks;
    private readonly int[] _head;
    private readonly int[] _heavy;
    // From each node to the anchor of its island.
    private readonly DoubleDouble[] _ohms;

    /// <summary>Factors the blocks of a network.</summary>
    public BlockTree(ResistorNetwork network)
    {
        _bridges = network.Bridges;
        _blocks = new LoopBlock?[network.NodeCount];
        (_head, _heavy) = (new int[network.NodeCount], new int[network.NodeCount]);
        _ohms = new DoubleDouble[network.NodeCount];
        FindHeavyPaths();
        var toTop = Factor(network);
        foreach (var node in _bridges.InOrder)
            if (AboveOf(node) is >= 0 and var above)
                _ohms[node] = _ohms[above] + (BlockAt(node)?.Self(PlaceOf(node)) ?? ((DoubleDouble)1 / toTop[node]));
    }

    /// <summary>Volts of one node for one ampere fed into another of the same island and taken from its anchor.</summary>
    public DoubleDouble Transfer(int one, int other)
    {
        var (top, belowToOne, belowToOther) = Meeting(one, other);
        return belowToOne >= 0 && belowToOther >= 0 && _bridges.BlockOf(belowToOne) == _bridges.BlockOf(belowToOther)
            ? _ohms[top] + BlockAt(belowToOne)!.Transfer(PlaceOf(belowToOne), PlaceOf(belowToOther))
            : _ohms[top];
    }

    /// <summary>Resistance in ohms between two nodes of one island.</summary>
    public DoubleDouble Between(int one, int other)
    {
        var shared = Transfer(one, other);
        return _ohms[one] + _ohms[other] - shared - shared;
    }

    /// <summary>Makes ready to ask many nodes for their potential while a current flows.</summary>
    /// <param name="entry">Where it is fed in.</param>
    /// <param name="exit">Where it is taken, in the same island.</param>
    public BlockFlow Flow(int entry, int exit)
    {
        var (blockOfEntry, blockOfExit) = (_bridges.BlockOf(entry), _bridges.BlockOf(exit));
        if (blockOfEntry >= 0 && (blockOfEntry == blockOfExit || _bridges.TopOf(blockOfEntry) == exit))
            return FlowIn(blockOfEntry, entry, exit);
        return blockOfExit >= 0 && _bridges.TopOf(blockOfExit) == entry ? FlowIn(blockOfExit, entry, exit) : new BlockFlow(entry, exit, -1, -1, null, null);
    }

    /// <summary>Volts of a node while one ampere flows, to a constant of its island.</summary>
    public DoubleDouble Volts(in BlockFlow flow, int node)
    {
        if (flow.Block < 0)
            return Transfer(flow.Entry, node) - Transfer(flow.Exit, node);
        var below = BelowOn(flow.Top, node);
        if (below < 0 || _bridges.BlockOf(below) != flow.Block)
            return DoubleDouble.Zero;
        var place = PlaceOf(below);
        return flow.OfEntry is not { } ofEntry ? -flow.OfExit![place] : flow.OfExit is { } ofExit ? ofEntry[place] - ofExit[place] : ofEntry[place];
    }

    /// <summary>Volts of the nodes of one block while one ampere flows in at one of them and out at another.</summary>
    public void Volts(int block, int entry, int exit, BlockVolts volts)
    {
        var top = _bridges.TopOf(block);
        if (_blocks[block] is { } loops)
            volts.Take(entry == top ? null : loops.Column(PlaceOf(entry)), exit == top ? null : loops.Column(PlaceOf(exit)));
        else
            volts.Take(entry == top ? -BridgeOhms(block) : BridgeOhms(block));
    }

    /// <summary>Resistance in ohms of a block of two nodes.</summary>
    public DoubleDouble BridgeOhms(int block) => _ohms[block] - _ohms[_bridges.TopOf(block)];

    private BlockFlow FlowIn(int block, int entry, int exit) =>
        new(entry, exit, block, _bridges.TopOf(block), ColumnIn(block, entry), ColumnIn(block, exit));

    // The top of a block is its ground.
    private BlockColumn? ColumnIn(int block, int node) =>
        _bridges.BlockOf(node) != block ? null : _blocks[block] is { } loops ? loops.Column(PlaceOf(node)) : new BlockColumn([BridgeOhms(block)]);

    // In the block below whose top it lies.
    private int PlaceOf(int node) => _bridges.PlaceIn(_bridges.BlockOf(node), node);

    // A block of two nodes has none: all there is to know of it are the ohms of its lower node.
    private LoopBlock? BlockAt(int node) => _blocks[_bridges.BlockOf(node)];

    // The top of the block that a node is in below its top.
    private int AboveOf(int node) => _bridges.BlockOf(node) is >= 0 and var block ? _bridges.TopOf(block) : -1;

    // Conductance from each node to the top of its block, by which the blocks of two nodes are known, in siemens.
    private DoubleDouble[] Factor(ResistorNetwork network)
    {
        var toTop = new DoubleDouble[network.NodeCount];
        var edges = new List<Edge>?[network.NodeCount];
        for (var index = 0; index < network.EdgeCount; index++)
        {
            var (a, b, siemens) = network.EdgeOf(index);
            var (upper, lower) = _bridges.NumberOf(a) < _bridges.NumberOf(b) ? (a, b) : (b, a);
            if (AboveOf(lower) == upper)
                toTop[lower] += siemens;
            else
                (edges[_bridges.BlockOf(lower)] ??= []).Add(new Edge(PlaceOf(upper) - 1, PlaceOf(lower) - 1, siemens));
        }

        var members = new DoubleDouble[network.NodeCount][];
        foreach (var node in _bridges.InOrder)
            if (_bridges.BlockOf(node) is >= 0 and var block && _bridges.SizeOf(block) > 1)
                (members[block] ??= new DoubleDouble[_bridges.SizeOf(block)])[PlaceOf(node) - 1] = toTop[node];
        for (var block = 0; block < members.Length; block++)
            if (members[block] is not null)
                _blocks[block] = new LoopBlock(edges[block] ?? [], members[block]);
        return toTop;
    }

    private void FindHeavyPaths()
    {
        var sizes = new int[_head.Length];
        Array.Fill(_heavy, -1);
        for (var number = _head.Length - 1; number >= 0; number--)
        {
            var node = _bridges.NodeAt(number);
            sizes[node]++;
            if (AboveOf(node) is not (>= 0 and var above))
                continue;
            sizes[above] += sizes[node];
            if (_heavy[above] < 0 || sizes[node] > sizes[_heavy[above]])
                _heavy[above] = node;
        }

        foreach (var node in _bridges.InOrder)
        {
            var above = AboveOf(node);
            _head[node] = above >= 0 && _heavy[above] == node ? _head[above] : node;
        }
    }

    // The lowest node on both ways to the anchor, and the nodes before it on each; -1 where a way begins there.
    private (int Top, int BelowToOne, int BelowToOther) Meeting(int one, int other)
    {
        var (belowToOne, belowToOther) = (-1, -1);
        while (_head[one] != _head[other])
            if (_bridges.DepthOf(_head[one]) >= _bridges.DepthOf(_head[other]))
                one = AboveOf(belowToOne = _head[one]);
            else
                other = AboveOf(belowToOther = _head[other]);
        if (_bridges.DepthOf(one) > _bridges.DepthOf(other))
            return (other, _heavy[other], belowToOther);
        return (one, belowToOne, _bridges.DepthOf(one) < _bridges.DepthOf(other) ? _heavy[one] : belowToOther);
    }

    // The node before a node on the way to it from another; -1 or a node of another block when it is not on that way.
    private int BelowOn(int top, int node)
    {
        var number = _bridges.NumberOf(node);
        if (number <= _bridges.NumberOf(top) || number >= _bridges.EndOf(top))
            return -1;
        var depth = _bridges.DepthOf(top) + 1;
        while (_bridges.DepthOf(_head[node]) > depth)
            node = AboveOf(_head[node]);
        return _bridges.DepthOf(_head[node]) == depth ? _head[node] : _head[node] == _head[top] ? _heavy[top] : -1;
    }
}
