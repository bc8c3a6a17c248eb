using Proveout.Engine.Faults;

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
/// <param name="Optimality">How near the plan is to the cheapest possible, in a sentence.</param>
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
    string Optimality);

/// <summary>Checks done in one set-up.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Checks">Its checks, in the order to do them.</param>
public sealed record PlanGroup(SetUp SetUp, IReadOnlyList<PlannedCheck> Checks);

/// <summary>A check of the plan, for people.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="Check">The check.</param>
/// <param name="Expected">What it should read, in words and units.</param>
/// <param name="Catches">How many faults it surely catches.</param>
public sealed record PlannedCheck(int Number, Check Check, string Expected, int Catches);

/// <summary>Coverage of one kind of fault.</summary>
/// <param name="Kind">Kind of fault, in plain words.</param>
/// <param name="Faults">How many were simulated.</param>
/// <param name="Caught">How many the plan surely catches.</param>
public sealed record KindCoverage(string Kind, int Faults, int Caught);

/// <summary>Faults that no check here can tell.</summary>
/// <param name="Sentence">What they have in common, in a sentence.</param>
/// <param name="OtherEvidence">What would show them instead.</param>
/// <param name="Severity">The worst of them.</param>
/// <param name="Examples">Some of them, a sentence each.</param>
/// <param name="Count">How many there are.</param>
public sealed record UncoveredGroup(string Sentence, string OtherEvidence, Severity Severity, IReadOnlyList<string> Examples, int Count);
