using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once in one network at one limit. One thread's own.</summary>
/// <param name="limit">The network with all controls at rest.</param>
/// <param name="faults">All faults.</param>
internal sealed class PairLimitWorker(PairLimit limit, IReadOnlyList<WiringFault> faults)
{
    private readonly ChangedNetwork _network = new(limit.Network);
    private readonly List<EdgeChange> _changes = [];
    private readonly List<ElementChange> _faulty = [];
    private bool _isApplied;

    /// <summary>What the faults taken last and the operated control change.</summary>
    public List<EdgeChange> Changes => _changes;

    /// <summary>The network under the faults taken last.</summary>
    public ChangedNetwork Network
    {
        get
        {
            if (!_isApplied)
                _network.Apply(_changes);
            _isApplied = true;
            return _network;
        }
    }

    /// <summary>Takes faults that do not contradict each other in place of those before.</summary>
    /// <param name="together">The faults.</param>
    /// <param name="ports">Knows what the operated control of the set-up changes; null when none is operated.</param>
    public void Take(ReadOnlySpan<int> together, LimitPorts? ports)
    {
        _isApplied = false;
        _changes.Clear();
        foreach (var fault in together)
            _changes.AddRange(limit.ChangesOf(fault));
        if (ports is not { HasControls: true })
            return;
        _faulty.Clear();
        foreach (var fault in together)
            _faulty.AddRange(faults[fault].Changes);
        ports.AddControls(_faulty, _changes);
    }
}
