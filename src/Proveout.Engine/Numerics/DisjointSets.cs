namespace Proveout.Engine.Numerics;

/// <summary>Which of some things are joined, by way of others too (Tarjan, Journal of the ACM 22 (1975) 215-225; paths halved). Reused by one thread.</summary>
internal sealed class DisjointSets
{
    private int[] _above = [];

    /// <summary>Sets all apart.</summary>
    public void Reset(int count)
    {
        if (_above.Length < count)
            _above = new int[count];
        for (var thing = 0; thing < count; thing++)
            _above[thing] = thing;
    }

    /// <summary>The thing that stands for all that one is joined to.</summary>
    public int RootOf(int thing)
    {
        while (_above[thing] != thing)
            thing = _above[thing] = _above[_above[thing]];
        return thing;
    }

    /// <summary>Joins two; false when they were joined already.</summary>
    public bool Join(int one, int other)
    {
        var (below, root) = (RootOf(one), RootOf(other));
        _above[below] = root;
        return root != below;
    }
}
