namespace Proveout.Workshop;

/// <summary>A check plan with what it covers, for people.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Groups">Checks by set-up, in the order to do them.</param>
/// <param name="Coverage">Faults by kind and how many of them the plan surely catches.</param>
/// <param name="Uncovered">Groups of faults that no check here can tell, with what else would show them; worst first.</param>
/// <param name="CandidateChecks">How many checks were considered.</param>
/// <param name="Faults">How many faults were simulated.</param>
/// <param name="Caught">How many of them the plan surely catches.</param>
/// <param name="Catchable">How many of them any candidate surely catches.</param>
/// <param name="Minutes">Time that the plan takes, estimated.</param>
/// <param name="Optimality">How near the plan is to the cheapest possible, and how that is known, in sentences.</param>
public sealed record PlanView(
    MachineSummary Machine,
    IReadOnlyList<PlanGroup> Groups,
    IReadOnlyList<KindCoverage> Coverage,
    IReadOnlyList<UncoveredGroup> Uncovered,
    int CandidateChecks,
    int Faults,
    int Caught,
    int Catchable,
    double Minutes,
    string Optimality)
{
    /// <summary>What the checks take in this order, split by what takes it, in sentences.</summary>
    public string Order { get; init; } = "";

    /// <summary>Caught mistakes that no check considered tells apart from others, group by group.</summary>
    public IReadOnlyList<AmbiguousFaults> Ambiguous { get; init; } = [];

    /// <summary>What the plan does against two mistakes made together.</summary>
    public PairsView Pairs { get; init; } = PairsView.None;

    /// <summary>How finely the checks considered tell the caught mistakes apart, in a sentence.</summary>
    public string Isolation =>
        FormattableString.Invariant($"The checks considered tell the {Caught} mistakes apart into {Caught - Ambiguous.Sum(group => group.Sentences.Count - 1)} groups.");
}
