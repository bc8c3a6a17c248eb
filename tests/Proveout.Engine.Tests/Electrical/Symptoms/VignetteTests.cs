using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

/// <summary>Vignettes of common practice, computed from the models and ranked by the diagnosis.</summary>
public sealed class VignetteTests
{
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

    // Only the checks that the vignette names are needed, and only faults that change one of them can matter.
    private static FaultDictionary Dictionary(Vignette vignette) => Dictionaries.GetOrAdd(vignette.Machine, folder => new(() => Make(folder))).Value;

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, Lazy<FaultDictionary>> Dictionaries = [];

    private static FaultDictionary Make(string folder)
    {
        var outcome = MachineReader.Read(Repository.Texts(folder), Repository.Catalogue);
        var campaign = new WiringCampaign(outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics)));
        var symptoms = new SymptomCampaign(new LiveModel(campaign.Context), campaign.Faults);
        return campaign.Run().Extended(symptoms.SetUps, symptoms.Checks, symptoms.Run());
    }
}
