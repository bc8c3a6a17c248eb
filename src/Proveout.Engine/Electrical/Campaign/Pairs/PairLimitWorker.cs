using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once in one network at one limit. One thread's own.</summary>
internal sealed class PairLimitWorker(PairLimit limit, EdgeChange[] controls)
{
    private readonly List<EdgeChange> _changes = [];

    /// <summary>The network under the faults applied last.</summary>
    public PairNetwork Network { get; } = new(limit.Transfers, limit.Network);

    /// <summary>Applies faults that do not contradict each other in place of those before.</summary>
    public void Apply(ReadOnlySpan<int> faults)
    {
        _changes.Clear();
        foreach (var fault in faults)
            _changes.AddRange(limit.ChangesOf(fault));
        _changes.AddRange(controls);
        Network.Apply(_changes);
    }
}
