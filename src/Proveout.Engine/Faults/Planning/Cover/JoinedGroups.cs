namespace Proveout.Engine.Faults;

/// <summary>Groups of things that are joined two by two (disjoint sets; Tarjan, Journal of the ACM 22 (1975) 215-225).</summary>
internal sealed class JoinedGroups(int things)
{
    private readonly int[] _parent = [.. Enumerable.Range(0, things)];

    /// <summary>The thing that stands for the group of another.</summary>
    public int Of(int thing)
    {
        while (_parent[thing] != thing)
            thing = _parent[thing] = _parent[_parent[thing]];
        return thing;
    }

    /// <summary>Makes two groups one.</summary>
    public void Join(int one, int two) => _parent[Of(two)] = Of(one);
}
