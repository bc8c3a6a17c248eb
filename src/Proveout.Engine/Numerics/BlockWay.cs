namespace Proveout.Engine.Numerics;

/// <summary>The blocks on the way between two nodes of an island, each once, from both ends up to where they meet.</summary>
internal struct BlockWay(Bridges bridges, int one, int other)
{
    private int _one = one;
    private int _other = other;
    private bool _isTurned;

    /// <summary>The block, as <see cref="Bridges.BlockOf"/> names it.</summary>
    public int Current { get; private set; }

    /// <summary>The node of the block where the way comes to it from the one node.</summary>
    public int First { get; private set; }

    /// <summary>The node of the block where the way leaves it to the other node.</summary>
    public int Last { get; private set; }

    /// <summary>Goes through the blocks.</summary>
    public readonly BlockWay GetEnumerator() => this;

    /// <summary>Goes on to the next block; false when there is none.</summary>
    public bool MoveNext()
    {
        if (_one == _other)
            return false;
        if (bridges.DepthOf(_one) < bridges.DepthOf(_other))
            (_one, _other, _isTurned) = (_other, _one, !_isTurned);
        Current = bridges.BlockOf(_one);
        var (entry, exit) = (_one, bridges.BlockOf(_other) == Current ? _other : bridges.TopOf(Current));
        (First, Last) = _isTurned ? (exit, entry) : (entry, exit);
        _one = exit;
        return true;
    }
}
