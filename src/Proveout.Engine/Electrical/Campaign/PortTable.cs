namespace Proveout.Engine.Electrical;

/// <summary>The ports that are measured in one set-up, with their resistances in the machine as designed.</summary>
internal sealed class PortTable : ICheckTable
{
    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    /// <param name="rest">The network with all controls at rest and the same plugs apart.</param>
    /// <param name="state">The network of this set-up.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="candidates">The candidates of the set-up.</param>
    /// <param name="firstCheck">Index of the first of them among all checks.</param>
    /// <param name="tied">Two nodes that a person joins by a short lead for these checks; null when none.</param>
    public PortTable(
        StateNetwork rest, StateNetwork state, WiringNetwork wiring, CandidateCheck[] candidates, int firstCheck, (int A, int B)? tied = null)
    {
        (Candidates, FirstCheck, StrayPaths, Strays) = (candidates, firstCheck, rest.StrayPaths, rest.Strays);
        var pairs = Array.ConvertAll(candidates, candidate => (candidate.A, candidate.B));
        var operated = wiring.Elements.Where(element => rest.Conducts(element) != state.Conducts(element)).ToArray();
        Low = new LimitPorts(wiring, rest, atHigh: false, pairs, operated, tied);
        High = new LimitPorts(wiring, rest, atHigh: true, pairs, operated, tied);
        Good = Array.ConvertAll(pairs, pair => state.Resistance(pair.A, pair.B));
        if (tied is not null)
            Good = new PortWorker(this).LimitsAtRest();
    }

    /// <inheritdoc/>
    public ICheckWorker NewWorker() => new PortWorker(this);

    /// <summary>The candidates.</summary>
    public CandidateCheck[] Candidates { get; }

    /// <summary>Index of the first of them among all checks.</summary>
    public int FirstCheck { get; }

    /// <summary>Junctions and insulation, which stand beside the resistances.</summary>
    public StrayPaths StrayPaths { get; }

    /// <summary>What of them touches each island of the low network with all controls at rest.</summary>
    public StrayPieces Strays { get; }

    /// <summary>The ports with every resistance at its low limit.</summary>
    public LimitPorts Low { get; }

    /// <summary>The ports with every resistance at its high limit.</summary>
    public LimitPorts High { get; }

    /// <summary>Limits of each port in the machine as designed, in ohms.</summary>
    public (double LowOhms, double HighOhms)[] Good { get; }
}
