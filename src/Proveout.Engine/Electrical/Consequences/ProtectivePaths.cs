namespace Proveout.Engine.Electrical;

/// <summary>What metal is joined to the protective contact of the inlet, with mistakes in place.</summary>
internal sealed class ProtectivePaths
{
    private readonly int[] _parent;
    private readonly int[] _protective;

    public ProtectivePaths(LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage)
    {
        var circuit = model.Circuit;
        _parent = new int[circuit.NodeCount];
        for (var node = 0; node < _parent.Length; node++)
            _parent[node] = node;
        var changed = new ChangedCircuit(circuit, changes, stage);
        foreach (var branch in circuit.Branches)
            if (branch is { Kind: LiveBranchKind.Path, A: >= 0, B: >= 0, Subject: not MainsBranches.Subject } && changed.Siemens[branch.Index] > 1 / NetworkElement.MetalOhms)
                _parent[Root(branch.A)] = Root(branch.B);
        foreach (var (a, b, siemens) in changed.Joins)
            if (b >= 0 && siemens > 1 / NetworkElement.MetalOhms)
                _parent[Root(a)] = Root(b);
        _protective =
        [
            .. circuit.Branches
                .Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Protective })
                .Select(branch => branch.A),
        ];
    }

    /// <summary>True when a node is one metal with the protective contact of an inlet.</summary>
    public bool Reaches(int node) => _protective.Any(contact => Root(contact) == Root(node));

    private int Root(int node)
    {
        while (_parent[node] != node)
            node = _parent[node] = _parent[_parent[node]];
        return node;
    }
}
