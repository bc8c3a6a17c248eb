using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once in one network at one limit. One thread's own.</summary>
/// <param name="limit">The network with all controls at rest.</param>
/// <param name="ports">Knows what the operated control of the set-up changes; null when none is operated.</param>
/// <param name="faults">All faults.</param>
internal sealed class PairLimitWorker(PairLimit limit, LimitPorts? ports, IReadOnlyList<WiringFault> faults)
{
    private readonly List<EdgeChange> _changes = [];
    private readonly List<ElementChange> _faulty = [];

    /// <summary>The network under the faults applied last.</summary>
    public ChangedNetwork Network { get; } = new(limit.Network);

    /// <summary>Applies faults that do not contradict each other in place of those before.</summary>
    public void Apply(ReadOnlySpan<int> together)
    {
        _changes.Clear();
        foreach (var fault in together)
            _changes.AddRange(limit.ChangesOf(fault));
        if (ports is { HasControls: true })
            AddControls(together);
        Network.Apply(_changes);
    }

    private void AddControls(ReadOnlySpan<int> together)
    {
        _faulty.Clear();
        foreach (var fault in together)
            _faulty.AddRange(faults[fault].Changes);
        ports!.AddControls(_faulty, _changes);
    }
}
