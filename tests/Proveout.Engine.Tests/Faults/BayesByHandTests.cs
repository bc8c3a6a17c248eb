using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>
/// Posteriors worked out on paper. Prior odds 1 : 99 for a fault and for an unknown mistake; a reading is misread at 0.005, and what is then shown
/// is over range at 0.5; a symptom is false at 0.02. All weights below are multiplied by 99.
/// </summary>
public sealed class BayesByHandTests
{
    private const double Over = ReadingInterval.OverRange;

    [Fact]
    public void One_open_check_and_one_fault_that_opens_it()
    {
        var posterior = Diagnosis.Of(HandMade.Of(1, 0, [new() { ["c0"] = HandMade.Open }]), [new("c0", Over)]);
        // The fault 1 x 0.995 x 1; sound and misread 99 x 0.005 x 0.5; unknown 1 x B(2, 19) / B(1, 19) x 0.5 = 0.5 / 20.
        const double total = 0.995 + 0.2475 + 0.025;
        Assert.Equal(0.995 / total, Of(posterior, 0), 9);
        Assert.Equal(0.2475 / total, posterior.Hypotheses.Single(hypothesis => hypothesis.Faults.Count == 0).Probability, 9);
        Assert.Equal(0.025 / total, posterior.Unknown, 9);
        Assert.Equal(0, posterior.Sound);
    }

    [Fact]
    public void A_fault_that_only_may_open_the_check_is_half_as_likely()
    {
        var posterior = Diagnosis.Of(HandMade.Of(1, 0, new() { ["c0"] = HandMade.Open }, new() { ["c0"] = HandMade.MaybeOpen }), [new("c0", Over)]);
        Assert.Equal(2, Of(posterior, 0) / Of(posterior, 1), 9);
    }

    [Fact]
    public void A_pair_competes_with_a_single_fault_that_explains_both_readings()
    {
        var dictionary = HandMade.Of(
            2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c0"] = HandMade.Open, ["c1"] = HandMade.Open });
        var posterior = Diagnosis.Of(dictionary, [new("c0", Over), new("c1", Over)]);
        // Fault 2: 0.995^2. Both 0 and 1: 0.995^2 / 99. Either of them and the other reading misread: 0.995 x 0.0025.
        // Unknown: B(3, 19) / B(1, 19) x 0.25 = 2 / 420 x 0.25.
        const double both = 0.995 * 0.995;
        const double total = both + (both / 99) + (2 * 0.995 * 0.0025) + (0.25 * 2 / 420);
        Assert.Equal(both / total, Of(posterior, 2), 9);
        Assert.Equal(both / 99 / total, Of(posterior, 0, 1), 9);
        Assert.Equal(0.995 * 0.0025 / total, Of(posterior, 0), 9);
        Assert.Equal(0.25 * 2 / 420 / total, posterior.Unknown, 9);
    }

    [Fact]
    public void Nothing_read_leaves_the_priors()
    {
        var posterior = Diagnosis.Of(HandMade.Of(1, 0, new() { ["c0"] = HandMade.Open }, new() { ["c0"] = HandMade.Open }), []);
        Assert.False(posterior.IsOff);
        Assert.Equal(99.0 / 102, posterior.Sound, 9);
        Assert.Equal(1.0 / 102, Of(posterior, 0), 9);
        Assert.Equal(1.0 / 102, posterior.Unknown, 9);
    }

    [Fact]
    public void Everything_that_is_believed_adds_up_to_one()
    {
        var posterior = Diagnosis.Of(
            HandMade.Of(2, 1, new() { ["c0"] = HandMade.Open }, new() { ["s0"] = HandMade.NotAsItShould }), [new("c0", Over), new("s0", 0)]);
        Assert.Equal(1, posterior.Sound + posterior.Unknown + posterior.Hypotheses.Sum(hypothesis => hypothesis.Probability), 12);
    }

    [Fact]
    public void A_reported_symptom_weighs_faults_against_a_false_report()
    {
        var posterior = Diagnosis.Of(HandMade.Of(0, 1, new() { ["s0"] = HandMade.NotAsItShould }, []), [new("s0", 0)]);
        // The fault 0.98; sound and falsely reported 99 x 0.02; unknown 0.5 / 20. The fault that changes nothing explains nothing.
        const double total = 0.98 + 1.98 + 0.025;
        Assert.Equal(0.98 / total, Of(posterior, 0), 9);
        Assert.Equal(0, Of(posterior, 1));
        Assert.Equal(["s0"], posterior.Hypotheses.Single(hypothesis => hypothesis.Faults.Count == 0).SetAside);
    }

    [Fact]
    public void A_false_symptom_does_not_exclude_the_truth_that_readings_show()
    {
        var dictionary = HandMade.Of(
            2, 1, new() { ["c0"] = HandMade.Open, ["c1"] = HandMade.Open, ["s0"] = HandMade.NotAsItShould }, new() { ["s0"] = HandMade.NotAsItShould });
        var posterior = Diagnosis.Of(dictionary, [new("c0", Over), new("c1", Over), new("s0", 1)]);
        Assert.Equal([0], posterior.Hypotheses[0].Faults);
        Assert.Equal(["s0"], posterior.Hypotheses[0].SetAside);
    }

    [Fact]
    public void A_symptom_that_a_fault_may_or_may_not_show_says_half_as_much()
    {
        var posterior = Diagnosis.Of(HandMade.Of(0, 1, new() { ["s0"] = HandMade.NotAsItShould }, new() { ["s0"] = HandMade.Either }), [new("s0", 0)]);
        Assert.Equal(2, Of(posterior, 0) / Of(posterior, 1), 9);
    }

    [Fact]
    public void A_symptom_that_was_not_asked_says_nothing()
    {
        var posterior = Diagnosis.Of(HandMade.Of(1, 1, new() { ["c0"] = HandMade.Open, ["s0"] = HandMade.NotAsItShould }, new() { ["c0"] = HandMade.Open }), [new("c0", Over)]);
        Assert.Equal(Of(posterior, 0), Of(posterior, 1), 12);
    }

    [Fact]
    public void Two_symptoms_of_two_faults_suspect_the_pair_beside_each_with_the_other_falsely_reported()
    {
        var posterior = Diagnosis.Of(
            HandMade.Of(0, 2, new() { ["s0"] = HandMade.NotAsItShould }, new() { ["s1"] = HandMade.NotAsItShould }), [new("s0", 0), new("s1", 0)]);
        // The pair 0.98^2 / 99 against 0.98 x 0.02 for one fault and a false report.
        Assert.Equal(0.98 / 99 / 0.02, Of(posterior, 0, 1) / Of(posterior, 0), 9);
    }

    private static double Of(Posterior posterior, params int[] faults) =>
        posterior.Hypotheses.Where(hypothesis => hypothesis.Faults.SequenceEqual(faults)).Sum(hypothesis => hypothesis.Probability);
}
