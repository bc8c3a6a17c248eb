namespace Proveout.Engine.Electrical;

/// <summary>Which nodes are one metal, with mistakes in place.</summary>
internal sealed class MetalPieces
{
    private readonly int[] _parent;

    /// <summary>Finds the pieces.</summary>
    /// <param name="changed">The circuit.</param>
    /// <param name="counts">Which of its paths may hold a piece together; new contacts always do. Both only while they are metal.</param>
    public MetalPieces(ChangedCircuit changed, Func<LiveBranch, bool> counts)
    {
        _parent = [.. Enumerable.Range(0, changed.Circuit.NodeCount)];
        foreach (var branch in changed.Circuit.Branches)
            if (branch is { Kind: LiveBranchKind.Path, A: >= 0, B: >= 0 } && changed.Siemens[branch.Index] > 1 / NetworkElement.MetalOhms && counts(branch))
                _parent[Of(branch.A)] = Of(branch.B);
        foreach (var (a, b, siemens) in changed.Joins)
            if (b >= 0 && siemens > 1 / NetworkElement.MetalOhms)
                _parent[Of(a)] = Of(b);
    }

    /// <summary>A node that stands for the piece of a node.</summary>
    public int Of(int node)
    {
        while (_parent[node] != node)
            node = _parent[node] = _parent[_parent[node]];
        return node;
    }
}
