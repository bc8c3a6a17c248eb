using System.Collections.Concurrent;

namespace Proveout.Engine.Faults;

/// <summary>Spreads work on faults over all processors, each thread with interactions of its own, which are kept from one piece of work to the next.</summary>
internal sealed class FaultThreads(IFaultInteractions interactions)
{
    private readonly ConcurrentStack<IFaultInteractions> _idle = [];

    /// <summary>Does every turn of a piece of work.</summary>
    public void ForEach(int count, Action<int, IFaultInteractions> turn, CancellationToken cancellation) =>
        Parallel.For(
            0,
            count,
            new ParallelOptions { CancellationToken = cancellation },
            () => _idle.TryPop(out var idle) ? idle : interactions.ForAnotherThread(),
            (index, _, own) =>
            {
                turn(index, own);
                return own;
            },
            _idle.Push);
}
