using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ports that are measured in one set-up, with their resistances in the machine as designed.</summary>
/// <remarks>
/// A set-up in which one control is operated is a change of the set-up with all controls at rest, like a fault: its ports are measured on the
/// network that is factored already.
/// </remarks>
internal sealed class PortTable
{
    private readonly double[] _anchoredLow;
    private readonly double[] _anchoredHigh;
    private readonly HashSet<int> _islandsLow;
    private readonly HashSet<int> _islandsHigh;

    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    /// <param name="rest">The network with all controls at rest and the same plugs apart.</param>
    /// <param name="state">The network of this set-up.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="candidates">The candidates of the set-up.</param>
    /// <param name="firstCheck">Index of the first of them among all checks.</param>
    public PortTable(StateNetwork rest, StateNetwork state, WiringNetwork wiring, CandidateCheck[] candidates, int firstCheck)
    {
        (Rest, Candidates, FirstCheck) = (rest, candidates, firstCheck);
        _anchoredLow = [.. candidates.Select(candidate => (double)rest.Low.Network.AnchoredResistance(candidate.A, candidate.B))];
        _anchoredHigh = [.. candidates.Select(candidate => (double)rest.High.Network.AnchoredResistance(candidate.A, candidate.B))];
        Nodes = [.. candidates.SelectMany(candidate => new[] { candidate.A, candidate.B }).Distinct()];
        var switched = wiring.Elements.Where(element => rest.Conducts(element) != state.Conducts(element)).ToArray();
        ControlsLow = [.. switched.Select(element => FaultChanges.Switch(element, rest.Low, state.Conducts(element) ? 1 / element.LowOhms : 0))];
        ControlsHigh = [.. switched.Select(element => FaultChanges.Switch(element, rest.High, state.Conducts(element) ? 1 / element.HighOhms : 0))];
        var reach = Nodes.Concat(switched.SelectMany(element => new[] { element.A, element.B })).ToArray();
        _islandsLow = [.. reach.Select(rest.Low.Network.Islands.Of)];
        _islandsHigh = [.. reach.Select(rest.High.Network.Islands.Of)];
        Good = [.. candidates.Select(candidate => state.Resistance(candidate.A, candidate.B))];
    }

    /// <summary>The network that faults and controls change.</summary>
    public StateNetwork Rest { get; }

    /// <summary>The candidates.</summary>
    public CandidateCheck[] Candidates { get; }

    /// <summary>Index of the first of them among all checks.</summary>
    public int FirstCheck { get; }

    /// <summary>Nodes that they touch.</summary>
    public int[] Nodes { get; }

    /// <summary>What the operated control changes at the low limit.</summary>
    public EdgeChange[] ControlsLow { get; }

    /// <summary>What it changes at the high limit.</summary>
    public EdgeChange[] ControlsHigh { get; }

    /// <summary>Limits of each port in the machine as designed, in ohms.</summary>
    public (double LowOhms, double HighOhms)[] Good { get; }

    /// <summary>Anchored resistance of a port at the low limit, in ohms.</summary>
    public double AnchoredLow(int candidate) => _anchoredLow[candidate];

    /// <summary>Anchored resistance of a port at the high limit, in ohms.</summary>
    public double AnchoredHigh(int candidate) => _anchoredHigh[candidate];

    /// <summary>True when a change at the low limit can alter a port.</summary>
    public bool IsReachedLow(List<EdgeChange> changes) => IsReached(changes, _islandsLow, Rest.Low.Network);

    /// <summary>True when a change at the high limit can alter a port.</summary>
    public bool IsReachedHigh(List<EdgeChange> changes) => IsReached(changes, _islandsHigh, Rest.High.Network);

    private static bool IsReached(List<EdgeChange> changes, HashSet<int> islands, ResistorNetwork network)
    {
        foreach (var change in changes)
            if (islands.Contains(network.Islands.Of(change.A)) || islands.Contains(network.Islands.Of(change.B)))
                return true;
        return false;
    }
}
