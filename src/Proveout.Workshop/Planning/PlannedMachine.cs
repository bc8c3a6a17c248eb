using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A machine with its fault dictionary and check plan.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Campaign">The campaign that simulated its faults.</param>
/// <param name="Live">The machine while it is energised.</param>
/// <param name="Consequences">What mistakes then do.</param>
/// <param name="Dictionary">What every check shows under every fault, with the consequence of each as computed.</param>
/// <param name="Plan">The checks to do.</param>
public sealed record PlannedMachine(
    LoadedMachine Machine, WiringCampaign Campaign, LiveModel Live, LiveConsequences Consequences, FaultDictionary Dictionary, CheckPlan Plan)
{
    private readonly ConcurrentDictionary<int, Check> _explained = new();
    private readonly ConcurrentDictionary<int, string> _catches = new();

    /// <summary>What the plan does against every pair of faults.</summary>
    public required PairReport Pairs { get; init; }

    /// <summary>What two mistakes together do.</summary>
    public required PairConsequences Together { get; init; }

    /// <summary>Indices of the checks that stand in the plan for pairs of faults.</summary>
    public IReadOnlyList<int> AddedForPairs { get; init; } = [];

    /// <summary>Makes a simulator of several faults at once, for one thread; null where there is none, and then a check that two of them change says nothing.</summary>
    public Func<IFaultSimulator>? Simulators { get; init; }

    /// <summary>Simulates and plans a machine.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="cancellation">Stops the simulation.</param>
    public static PlannedMachine Of(LoadedMachine machine, bool onlyGreedy = false, CancellationToken cancellation = default)
    {
        var campaign = new WiringCampaign(machine.Design);
        var live = new LiveModel(campaign.Context);
        var consequences = new LiveConsequences(live);
        var dictionary = campaign.RunVerdicts(cancellation: cancellation);
        dictionary = dictionary.WithFaults([.. dictionary.Faults.Zip(consequences.OfAll(campaign.Faults, cancellation), Weighed)]);
        var interactions = new WiringInteractions(campaign);
        var together = new PairConsequences(consequences, campaign.Faults, dictionary);
        var pairs = PairPlan.Of(dictionary, new RememberedInteractions(interactions), onlyGreedy, together.WorstOf, cancellation: cancellation, beyondPlan: false);
        return new PlannedMachine(machine, campaign, live, consequences, dictionary, pairs.Plan)
        {
            Pairs = pairs.Report,
            Together = together,
            AddedForPairs = pairs.AddedChecks,
            Simulators = interactions.ForAnotherThread,
        };
    }

    /// <summary>The check with an identifier with the reason for its expectation, or null.</summary>
    public Check? FindCheck(string id) => Dictionary.IndexOfCheck(id) is { } index ? Explained(index) : null;

    /// <summary>The check at an index with the reason for its expectation.</summary>
    public Check Explained(int index) =>
        index >= Campaign.CandidateCount
            ? Dictionary.Checks[index]
            : _explained.GetOrAdd(index, check => Dictionary.Checks[check] with { Why = Campaign.Explain(check) });

    /// <summary>The same machine with symptoms and live readings behind the dead checks; the plan stays as it is. Takes some seconds.</summary>
    public PlannedMachine WithLiveChecks(CancellationToken cancellation = default)
    {
        var symptoms = new SymptomCampaign(Live, Campaign.Faults);
        return this with
        {
            Dictionary = Dictionary.Extended(symptoms.SetUps, symptoms.Checks, symptoms.Run(cancellation)),
            Simulators = Simulators is { } dead ? () => new LiveBlindSimulator(dead(), Campaign.CandidateCount) : null,
        };
    }

    /// <summary>What the check at an index would catch, in a few words.</summary>
    public string CatchesShort(int index) => _catches.GetOrAdd(index, check => PlanViews.CatchesOf(this, check));

    private static Fault Weighed(Fault fault, Consequence consequence) =>
        fault with { Severity = consequence.Severity, Consequence = consequence.Sentence };
}
