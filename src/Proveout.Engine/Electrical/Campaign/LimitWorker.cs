using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the ports of one set-up with every resistance at one limit. One thread's own.</summary>
internal sealed class LimitWorker(LimitPorts ports)
{
    private readonly List<EdgeChange> _changes = [];
    private bool _reached;

    /// <summary>The network under the fault applied last.</summary>
    public ChangedNetwork Network { get; } = new(ports.Ports);

    /// <summary>Applies a fault in place of the one before; false when it can alter no port.</summary>
    public bool Apply(WiringFault fault)
    {
        _changes.Clear();
        ports.Changes.Add(fault, _changes);
        _reached = ports.IsReachedBy(_changes);
        if (!_reached)
            return false;
        _changes.AddRange(ports.Controls);
        Network.Apply(_changes);
        return true;
    }

    /// <summary>True when the fault may alter a port or the piece of the network around it, with what it leaves in ohms.</summary>
    public bool Alters(int port, out double ohms)
    {
        ohms = 0;
        if (!_reached)
            return false;
        if (Network.Alters(port, out ohms))
            return true;
        // Then the port reads as with all controls at rest; the machine as designed may not, with one operated.
        ohms = ports.Ports.Ohms(port);
        return ports.Controls.Length > 0 || (!Network.HasPiecesAsBefore && Network.Touches(port));
    }
}
