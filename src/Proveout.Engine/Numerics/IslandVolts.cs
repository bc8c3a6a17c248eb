namespace Proveout.Engine.Numerics;

/// <summary>Volts of all nodes of an island while one ampere flows along a way through many of its blocks. Reused from way to way by one thread.</summary>
/// <remarks>One sweep along the search order: in a block on the way a node has the volts of the block's top and what the current sets up above that, in any other those of the top.</remarks>
internal sealed class IslandVolts(ResistorNetwork network)
{
    private readonly List<BlockFlow> _flows = [];
    private (int Turn, int Flow)[] _flowIn = [];
    private DoubleDouble[] _volts = [];
    private int _turn;

    /// <summary>Takes a way.</summary>
    /// <param name="entry">Where the current is fed in.</param>
    /// <param name="exit">Where it is taken, in the same island.</param>
    public void Take(int entry, int exit)
    {
        TakeBlocks(entry, exit);
        var bridges = network.Bridges;
        var anchor = network.AnchorOf(network.Islands.Of(entry));
        _volts[anchor] = DoubleDouble.Zero;
        foreach (var node in bridges.InOrder[(bridges.NumberOf(anchor) + 1)..bridges.EndOf(anchor)])
        {
            var block = bridges.BlockOf(node);
            _volts[node] = _volts[bridges.TopOf(block)];
            if (_flowIn[block] is var (turn, flow) && turn == _turn)
                _volts[node] += network.Blocks.Volts(_flows[flow], node);
        }
    }

    /// <summary>Volts of one node of the island over another; none at all where no current flows between them.</summary>
    public double Between(int one, int other) => DoubleDouble.Difference(_volts[one], _volts[other]);

    private void TakeBlocks(int entry, int exit)
    {
        if (_volts.Length == 0)
            (_volts, _flowIn) = (new DoubleDouble[network.NodeCount], new (int, int)[network.NodeCount]);
        _turn++;
        _flows.Clear();
        var way = new BlockWay(network.Bridges, entry, exit);
        while (way.MoveNext())
        {
            _flowIn[way.Current] = (_turn, _flows.Count);
            _flows.Add(network.Blocks.Flow(way.First, way.Last));
        }
    }
}
