using System.Collections.Concurrent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>The responses of wiring faults: which checks catch each is known, the rest is simulated once it is asked for.</summary>
/// <param name="tables">Every check.</param>
/// <param name="faults">The faults.</param>
/// <param name="firstAlike">For each fault the first that changes the same place alike.</param>
/// <param name="catching">For each fault the checks that surely catch it, rising.</param>
internal sealed class SimulatedResponses(ICheckTable[] tables, IReadOnlyList<WiringFault> faults, int[] firstAlike, int[][] catching) : RememberedResponses(faults.Count)
{
    private readonly ConcurrentStack<FaultResponder> _idle = new();

    /// <inheritdoc/>
    public override IEnumerable<int> Catching(int fault) => catching[fault];

    /// <inheritdoc/>
    public override bool IsCatching(int fault, int check) => Array.BinarySearch(catching[fault], check) >= 0;

    /// <inheritdoc/>
    protected override FaultResponse Find(int fault)
    {
        if (firstAlike[fault] != fault)
            return Of(firstAlike[fault]);
        var responder = _idle.TryPop(out var idle) ? idle : new FaultResponder(tables);
        var response = responder.Respond(faults[fault]);
        _idle.Push(responder);
        return response;
    }
}
