namespace Proveout.Engine.Numerics;

/// <summary>The blocks on the way between two nodes of an island, from both ends up to where they meet.</summary>
/// <remarks>Of two nodes the one found later in the search does not lie above the other: it is left by the block that it shares with the node above it.</remarks>
internal struct BlockWay(Bridges bridges, int one, int other)
{
    private int _one = one;
    private int _other = other;

    /// <summary>The block, as <see cref="Bridges.BlockOf"/> names it.</summary>
    public int Current { get; private set; }

    /// <summary>Goes through the blocks.</summary>
    public readonly BlockWay GetEnumerator() => this;

    /// <summary>Goes on to the next block; false when there is none.</summary>
    public bool MoveNext()
    {
        if (_one == _other)
            return false;
        if (bridges.NumberOf(_one) < bridges.NumberOf(_other))
            (_one, _other) = (_other, _one);
        Current = bridges.BlockOf(_one);
        _one = bridges.BlockOf(_other) == Current ? _other : bridges.TopOf(Current);
        return true;
    }
}
