using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

/// <summary>Vignettes of common practice, computed from the models and ranked by the diagnosis.</summary>
public sealed class VignetteTests
{
    private static readonly ConcurrentDictionary<string, Lazy<(WiringCampaign Campaign, FaultDictionary Dead)>> Campaigns = [];

    public static TheoryData<string> Names => [.. Vignette.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_mistake_of_the_vignette_comes_out_on_top(string name)
    {
        var vignette = Vignette.Of(name);
        var dictionary = Dictionary(vignette);
        IReadOnlyList<Reading> evidence = [.. vignette.Seen, .. vignette.Read];
        Assert.All(evidence, reading => Assert.NotNull(dictionary.IndexOfCheck(reading.CheckId)));

        var ranked = Diagnosis.Of(dictionary, evidence).Hypotheses;

        var first = ranked.Take(vignette.Within).Where(item => item.Faults.Count == 1).Select(item => dictionary.Faults[item.Faults[0]].Id).ToArray();
        Assert.True(
            first.Intersect(vignette.Mistakes).Any(),
            string.Join(Environment.NewLine, ranked.Take(12).Select(item =>
                $"{item.Probability:P1} {string.Join(" + ", item.Faults.Select(fault => dictionary.Faults[fault].Id))} aside {string.Join(", ", item.SetAside)}")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_was_seen_and_read_is_not_that_of_a_sound_machine(string name)
    {
        var vignette = Vignette.Of(name);
        var dictionary = Dictionary(vignette);

        Assert.Contains(vignette.Seen.Concat(vignette.Read), reading =>
            dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value].Judge(reading.Value) == Verdict.Fail);
    }

    // Only the symptoms and live readings that the vignette names are computed.
    private static FaultDictionary Dictionary(Vignette vignette)
    {
        var named = vignette.Seen.Concat(vignette.Read).Select(reading => reading.CheckId).ToHashSet(StringComparer.Ordinal);
        var (campaign, dead) = Campaigns.GetOrAdd(vignette.Machine, folder => new(() => Run(folder))).Value;
        var symptoms = new SymptomCampaign(new LiveModel(campaign.Context), campaign.Faults, check => named.Contains(check.Id));
        return dead.Extended(symptoms.SetUps, symptoms.Checks, symptoms.Run());
    }

    private static (WiringCampaign Campaign, FaultDictionary Dead) Run(string folder)
    {
        var outcome = MachineReader.Read(Repository.Texts(folder), Repository.Catalogue);
        var campaign = new WiringCampaign(outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics)));
        return (campaign, campaign.Run());
    }
}
