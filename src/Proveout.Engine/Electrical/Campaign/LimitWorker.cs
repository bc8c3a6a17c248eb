using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the ports of one set-up with every resistance at one limit. One thread's own.</summary>
/// <param name="ports">The ports.</param>
/// <param name="likewise">A worker of the same thread on the same network; each is asked only until the other is given a fault.</param>
internal sealed class LimitWorker(LimitPorts ports, LimitWorker? likewise = null)
{
    private readonly FaultEdges _edges = likewise?._edges ?? new(ports.Changes);
    private readonly List<EdgeChange> _changes = [];
    private bool _reached;
    private bool _movesStrays;

    /// <summary>The network under the fault applied last.</summary>
    public ChangedPorts Network { get; } = new(ports.Ports, likewise?.Network);

    /// <summary>True when the fault applied last can alter a port, so that the network is as it leaves it.</summary>
    public bool IsApplied => _reached;

    /// <summary>What a fault changes at this limit.</summary>
    public List<EdgeChange> ChangesOf(WiringFault fault) => _edges.Of(fault);

    /// <summary>Applies a fault in place of the one before; false when it can alter no port.</summary>
    public bool Apply(WiringFault fault)
    {
        var changes = _edges.Of(fault);
        _reached = ports.IsReachedBy(changes);
        if (!_reached)
            return false;
        _changes.Clear();
        _changes.AddRange(changes);
        ports.AddControls(fault.Changes, _changes);
        Network.Apply(_changes);
        _movesStrays = ports.HasStrays && !Network.HasPiecesAsBefore;
        return true;
    }

    /// <summary>Forgets the fault before.</summary>
    public void Leave() => _reached = false;

    /// <summary>Applies what the set-up itself changes, without a fault.</summary>
    public void ApplyControls()
    {
        _reached = ports.Controls.Length > 0;
        if (_reached)
            Network.Apply([.. ports.Controls]);
        _movesStrays = ports.HasStrays && _reached && !Network.HasPiecesAsBefore;
    }

    /// <summary>Sets the bits of all ports within one island whose resistance the fault may alter; with a control operated, of all ports of the touched islands.</summary>
    public void AddTouched(Span<ulong> mask)
    {
        if (!_reached)
            return;
        if (ports.HasControls)
        {
            ports.Masks.Add(Network.TouchedIslands, mask);
            return;
        }

        Network.AddTouched(mask);
    }

    /// <summary>True when the fault joins the two pieces that the leads of an open port are on.</summary>
    public bool Joins(int port) => !ports.Ports.IsOneIsland(port) && Network.PiecesOf(port) is var (one, other) && one == other;

    /// <summary>True when the fault may alter what a port reads, with what the resistances then leave in ohms.</summary>
    public bool Alters(int port, out double ohms)
    {
        ohms = 0;
        if (!_reached)
            return false;
        return Network.Alters(port, out ohms) || (AsksAnyway && StillMatters(port, out ohms));
    }

    private bool AsksAnyway => _movesStrays || ports.HasControls;

    // The resistances read as with all controls at rest. The machine as designed may not, with one operated; and other junctions and
    // insulation may lie beside them now.
    private bool StillMatters(int port, out double ohms)
    {
        ohms = ports.Ports.Ohms(port);
        return ports.HasControls || (ohms >= StrayPieces.NegligibleOhms && Network.Touches(port));
    }
}
