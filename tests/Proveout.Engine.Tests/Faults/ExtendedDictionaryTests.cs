using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class ExtendedDictionaryTests
{
    private static readonly ReadingInterval Good = new(1, 2);
    private static readonly ReadingInterval Bad = new(5, 6);

    private static readonly FaultDictionary Extended = new FaultDictionary(
            [SetUpOf("dead")],
            [CheckOf("a", "dead"), CheckOf("b", "dead")],
            [FaultOf("one"), FaultOf("two")],
            [new([1], [Bad]), new([], [])])
        .Extended([SetUpOf("live") with { Phase = Phase.Live }], [CheckOf("c", "live")], [new([], []), new([0], [Bad])]);

    [Fact]
    public void Further_checks_stand_behind_the_others() => Assert.Equal(["a", "b", "c"], Extended.Checks.Select(check => check.Id));

    [Fact]
    public void Indices_of_further_responses_are_shifted()
    {
        Assert.Equal([1], Extended.ChecksThatCatch(0));
        Assert.Equal([2], Extended.ChecksThatCatch(1));
        Assert.Equal(Bad, Extended.IntervalOf(1, 2));
        Assert.Equal(Good, Extended.IntervalOf(0, 2));
    }

    [Fact]
    public void Dead_and_live_states_stay_apart() => Assert.Equal([Phase.Dead, Phase.Live], Extended.SetUps.Select(setUp => setUp.Phase));

    [Fact]
    public void Responses_for_another_number_of_faults_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Extended.Extended([], [], []));

    private static SetUp SetUpOf(string id) => new(id, id, [], [], 1);

    private static Check CheckOf(string id, string setUp) => new(id, "resistance", setUp, id, id, [], "Ω", Good, "", 1);

    private static Fault FaultOf(string id) => new(id, "kind", id, [], Severity.Hidden, id, 0.01, "");
}
