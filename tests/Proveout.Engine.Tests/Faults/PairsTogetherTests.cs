using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class PairsTogetherTests
{
    // Faults 0 and 1 both change check 0, and neither alone can show 50.
    private static readonly FaultDictionary Dictionary =
        HandMade.Of(2, 0, new() { ["c0"] = new(10, 20) }, new() { ["c0"] = new(30, 40), ["c1"] = HandMade.Open });

    private static readonly Reading[] Readings = [new("c0", 50), new("c1", ReadingInterval.OverRange)];

    [Fact]
    public void Without_a_simulator_a_reading_that_neither_fault_shows_is_not_laid_to_the_pair() =>
        Assert.DoesNotContain(Diagnosis.Of(Dictionary, Readings).Hypotheses, hypothesis => hypothesis.Faults.Count == 2);

    [Fact]
    public void A_simulator_finds_the_pair_that_only_together_shows_the_reading() =>
        Assert.Equal([0, 1], Diagnosis.Of(Dictionary, Readings, new Fixed(new(45, 55))).Hypotheses[0].Faults);

    [Fact]
    public void A_simulator_clears_the_pair_that_cannot_show_the_reading() =>
        Assert.DoesNotContain(Diagnosis.Of(Dictionary, Readings, new Fixed(new(80, 90))).Hypotheses, hypothesis => hypothesis.Faults.Count == 2);

    [Fact]
    public void Faults_that_contradict_each_other_are_no_pair() =>
        Assert.DoesNotContain(Diagnosis.Of(Dictionary, Readings, new Fixed(null)).Hypotheses, hypothesis => hypothesis.Faults.Count == 2);

    private sealed class Fixed(ReadingInterval? shown) : IFaultSimulator
    {
        public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) => check == 0 || shown is null ? shown : HandMade.Open;
    }
}
