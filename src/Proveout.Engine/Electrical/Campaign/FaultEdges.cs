using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What the fault asked for last changes, so that set-ups on the same network work it out once. One thread's own.</summary>
internal sealed class FaultEdges(FaultChanges changes)
{
    private readonly List<EdgeChange> _edges = [];
    private WiringFault? _fault;

    /// <summary>The changes that a fault makes; the list holds them until another fault is asked for.</summary>
    public List<EdgeChange> Of(WiringFault fault)
    {
        if (ReferenceEquals(fault, _fault))
            return _edges;
        _fault = fault;
        _edges.Clear();
        changes.Add(fault, _edges);
        return _edges;
    }
}
