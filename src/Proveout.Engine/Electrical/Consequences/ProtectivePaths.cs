namespace Proveout.Engine.Electrical;

/// <summary>What metal is joined to the protective contact of the inlet, with mistakes in place.</summary>
internal sealed class ProtectivePaths
{
    private readonly MetalPieces _pieces;
    private readonly int[] _protective;

    public ProtectivePaths(LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage)
    {
        var circuit = model.Circuit;
        _pieces = new(new ChangedCircuit(circuit, changes, stage), branch => branch.Subject != MainsBranches.Subject);
        _protective =
        [
            .. circuit.Branches
                .Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Protective })
                .Select(branch => branch.A),
        ];
    }

    /// <summary>True when a node is one metal with the protective contact of an inlet.</summary>
    public bool Reaches(int node) => _protective.Any(contact => _pieces.Of(contact) == _pieces.Of(node));
}
