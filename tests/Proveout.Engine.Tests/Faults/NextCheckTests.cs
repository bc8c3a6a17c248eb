using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class NextCheckTests
{
    private static readonly HashSet<string> Nothing = [];

    [Fact]
    public void A_question_that_halves_what_is_possible_tells_one_bit_less_what_false_reports_take()
    {
        // Two faults alike in likelihood: the capacity of a symmetric channel with error 0.02 (Shannon 1948): 1 - H(0.02) bits.
        var dictionary = HandMade.Of(0, 1, new() { ["s0"] = HandMade.NotAsItShould }, []);
        var posterior = new Posterior(true, 0, 0, [new([0], 0.5, []), new([1], 0.5, [])]);
        var entropy = -(0.02 * Math.Log2(0.02)) - (0.98 * Math.Log2(0.98));
        Assert.Equal(1 - entropy, NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start)!.Bits, 9);
    }

    [Fact]
    public void With_nothing_read_the_check_that_most_faults_change_is_worth_most()
    {
        var dictionary = HandMade.Of(
            2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c1"] = HandMade.Open });
        Assert.Equal(1, NextCheck.Of(dictionary, Diagnosis.Of(dictionary, []), Nothing, BenchPosition.Start)!.Check);
    }

    [Fact]
    public void A_check_where_suspects_may_show_the_same_tells_less_than_one_where_they_surely_differ()
    {
        var dictionary = HandMade.Of(
            2, 0, new() { ["c0"] = new(10, 20), ["c1"] = new(10, 20) }, new() { ["c0"] = new(15, 25), ["c1"] = new(30, 40) });
        var posterior = new Posterior(true, 0, 0, [new([0], 0.5, []), new([1], 0.5, [])]);
        var best = NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start)!;
        Assert.Equal(1, best.Check);
        Assert.InRange(best.Bits, 0.9, 1);
        Assert.InRange(NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start, check => check.Id == "c0")!.Bits, 0.1, 0.8);
    }

    [Fact]
    public void A_pair_that_may_show_anything_at_a_check_makes_it_tell_less()
    {
        var dictionary = HandMade.Of(1, 0, new() { ["c0"] = HandMade.Open }, new() { ["c0"] = new(10, 20) }, []);
        var posterior = new Posterior(true, 0, 0, [new([0], 0.4, []), new([2], 0.4, []), new([0, 1], 0.2, [])]);
        var alone = new Posterior(true, 0, 0, [new([0], 0.5, []), new([2], 0.5, [])]);
        Assert.Equal(
            0.8 * NextCheck.Of(dictionary, alone, Nothing, BenchPosition.Start)!.Bits,
            NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start)!.Bits,
            9);
    }

    [Fact]
    public void A_check_in_the_set_up_that_stands_is_preferred()
    {
        var dictionary = WithSecondSetUp();
        var posterior = Diagnosis.Of(dictionary, []);
        Assert.Equal(0, NextCheck.Of(dictionary, posterior, Nothing, new BenchPosition("bench", []))!.Check);
        Assert.Equal(1, NextCheck.Of(dictionary, posterior, Nothing, new BenchPosition("apart", []))!.Check);
    }

    [Fact]
    public void A_check_for_which_a_probe_stands_already_is_preferred()
    {
        var dictionary = HandMade.Of(2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open });
        var posterior = Diagnosis.Of(dictionary, []);
        Assert.Equal(1, NextCheck.Of(dictionary, posterior, Nothing, new BenchPosition("bench", [new("c1", "a", "")]))!.Check);
    }

    [Fact]
    public void Only_allowed_checks_are_proposed()
    {
        var dictionary = HandMade.Of(1, 1, [new() { ["c0"] = HandMade.Open, ["s0"] = HandMade.NotAsItShould }]);
        var posterior = Diagnosis.Of(dictionary, []);
        Assert.Equal("s0", dictionary.Checks[NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start, Symptom.Is)!.Check].Id);
        Assert.Null(NextCheck.Of(dictionary, posterior, Nothing, BenchPosition.Start, _ => false));
    }

    [Fact]
    public void A_check_of_a_later_phase_waits_however_much_it_tells()
    {
        var dictionary = HandMade.Of(
            2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c1"] = HandMade.Open });
        var posterior = Diagnosis.Of(dictionary, []);
        Assert.Equal(0, NextCheck.InPhases(dictionary, posterior, Nothing, BenchPosition.Start, check => check.Id == "c1" ? 1 : 0)!.Check);
    }

    [Fact]
    public void A_check_that_says_nothing_in_the_sound_machine_is_never_proposed()
    {
        var sound = HandMade.Of(1, 0, [new() { ["c0"] = HandMade.Open }]);
        var unpredictable = new FaultDictionary(
            sound.SetUps, [sound.Checks[0] with { Expectation = ReadingInterval.Anything }], sound.Faults, [sound.ResponseOf(0)]);
        Assert.Null(NextCheck.Of(unpredictable, Diagnosis.Of(unpredictable, []), Nothing, BenchPosition.Start));
    }

    private static FaultDictionary WithSecondSetUp()
    {
        var one = HandMade.Of(2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open });
        return new FaultDictionary(
            one.SetUps, [one.Checks[0], one.Checks[1] with { SetUp = "apart" }], one.Faults, [one.ResponseOf(0), one.ResponseOf(1)]);
    }
}
