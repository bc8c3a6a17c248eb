using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A machine with its fault dictionary and check plan.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Campaign">The campaign that simulated its faults.</param>
/// <param name="Dictionary">What every check shows under every fault.</param>
/// <param name="Plan">The checks to do.</param>
public sealed record PlannedMachine(LoadedMachine Machine, WiringCampaign Campaign, FaultDictionary Dictionary, CheckPlan Plan)
{
    /// <summary>Simulates several faults at once; null where nothing does, and then a check that two of them change says nothing.</summary>
    public IFaultSimulator? Simulator { get; init; }

    private readonly ConcurrentDictionary<int, Check> _explained = new();
    private readonly ConcurrentDictionary<int, string> _catches = new();

    /// <summary>Simulates and plans a machine.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="cancellation">Stops the simulation.</param>
    public static PlannedMachine Of(LoadedMachine machine, bool onlyGreedy = false, CancellationToken cancellation = default)
    {
        var campaign = new WiringCampaign(machine.Design);
        var dictionary = campaign.Run(cancellation);
        return new PlannedMachine(machine, campaign, dictionary, CheckPlan.Of(dictionary, onlyGreedy));
    }

    /// <summary>The check with an identifier with the reason for its expectation, or null.</summary>
    public Check? FindCheck(string id) => Dictionary.IndexOfCheck(id) is { } index ? Explained(index) : null;

    /// <summary>The check at an index with the reason for its expectation.</summary>
    public Check Explained(int index) =>
        _explained.GetOrAdd(index, check => Dictionary.Checks[check] with { Why = Campaign.Explain(check) });

    /// <summary>What the check at an index would catch, in a few words.</summary>
    public string CatchesShort(int index) => _catches.GetOrAdd(index, check => PlanViews.CatchesOf(this, check));
}
