using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>The ports that are measured in one set-up, with their resistances in the machine as designed.</summary>
internal sealed class PortTable
{
    private readonly StateNetwork _state;
    private readonly CandidateCheck[] _candidates;
    private readonly int _firstCheck;
    private readonly double[] _anchoredLow;
    private readonly double[] _anchoredHigh;

    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    public PortTable(StateNetwork state, CandidateCheck[] candidates, int firstCheck)
    {
        (_state, _candidates, _firstCheck) = (state, candidates, firstCheck);
        _anchoredLow = [.. candidates.Select(candidate => state.Low.Network.AnchoredResistance(candidate.A, candidate.B))];
        _anchoredHigh = [.. candidates.Select(candidate => state.High.Network.AnchoredResistance(candidate.A, candidate.B))];
    }

    /// <summary>Adds the checks that a fault changes, with what they may then show.</summary>
    public void AddResponses(WiringFault fault, WiringNetwork wiring, List<int> checks, List<ReadingInterval> intervals)
    {
        var low = ResponsesAt(_state.Low, FaultChanges.AtLow(fault, wiring, _state));
        var high = ResponsesAt(_state.High, FaultChanges.AtHigh(fault, wiring, _state));
        if (low is null && high is null)
            return;

        for (var index = 0; index < _candidates.Length; index++)
        {
            var candidate = _candidates[index];
            if (low?.Touches(candidate.A) != true && low?.Touches(candidate.B) != true && high?.Touches(candidate.A) != true && high?.Touches(candidate.B) != true)
                continue;
            var lowOhms = low?.Resistance(candidate.A, candidate.B, _anchoredLow[index]) ?? _state.Low.Network.Resistance(candidate.A, candidate.B);
            var highOhms = high?.Resistance(candidate.A, candidate.B, _anchoredHigh[index]) ?? _state.High.Network.Resistance(candidate.A, candidate.B);
            var shown = candidate.Mode.Shown(lowOhms, Math.Max(lowOhms, highOhms));
            if (shown == candidate.Check.Expectation)
                continue;
            checks.Add(_firstCheck + index);
            intervals.Add(shown);
        }
    }

    private static Numerics.ChangedNetwork? ResponsesAt(LimitNetwork limit, List<Numerics.EdgeChange> changes) =>
        changes.Count > 0 ? new Numerics.ChangedNetwork(limit.Network, changes) : null;
}
