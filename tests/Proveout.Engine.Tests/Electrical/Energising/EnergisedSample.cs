using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Energising;

/// <summary>A sample with its stages of energising, after all that dead checks surely catch has been excluded.</summary>
internal sealed class EnergisedSample
{
    private readonly LiveStage _loaded;

    private EnergisedSample(string name)
    {
        var campaign = new WiringCampaign(Repository.Design(name));
        Faults = campaign.Faults;
        var dictionary = campaign.Run();
        CaughtDead = CheckPlan.Of(dictionary, onlyGreedy: true).Caught.ToHashSet();
        var model = new LiveModel(campaign.Context);
        Consequences = new LiveConsequences(model);
        Stages = EnergisingOrder.Of(model, Consequences, Faults, CaughtDead);
        _loaded = new LiveStage("loaded", new HashSet<int>(), new StageStates(model).Loaded);
    }

    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>Faults that the dead checks surely catch.</summary>
    public IReadOnlySet<int> CaughtDead { get; }

    public LiveConsequences Consequences { get; }

    public IReadOnlyList<EnergisingStage> Stages { get; }

    public static EnergisedSample Of(string name) => new(name);

    /// <summary>True when a fault does harm with everything plugged, in the states that the last stage tries.</summary>
    public bool DoesHarmLoaded(int fault) => Consequences.FindingsOf(Faults[fault].Changes, _loaded) is [{ Severity: >= Severity.Damage }, ..];
}
