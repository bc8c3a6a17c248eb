using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class DiagnosisTests
{
    private static readonly FaultDictionary Dictionary = SmallDictionary.Of(4, [[0, 1], [1, 2], [2, 3], [3]]);

    [Fact]
    public void While_every_reading_passes_nothing_is_suspected() =>
        Assert.Empty(Diagnosis.Explain(Dictionary, [new("c0", 0.05), new("c1", 0)]));

    [Fact]
    public void One_failed_reading_suspects_every_fault_that_shows_it()
    {
        var suspects = Diagnosis.Explain(Dictionary, [new("c0", 1.5)]);
        Assert.Equal([0, 1], suspects.SelectMany(suspect => suspect.Faults).Order());
    }

    [Fact]
    public void A_passed_reading_clears_the_faults_that_would_have_failed_it() =>
        Assert.Equal([0], Diagnosis.Explain(Dictionary, [new("c0", 1.5), new("c1", 0.05)])[0].Faults);

    [Fact]
    public void Two_mistakes_are_named_together_when_no_single_one_explains_all() =>
        Assert.Equal([0, 3], Diagnosis.Explain(Dictionary, [new("c0", 1.5), new("c1", 0.05), new("c2", 1.2), new("c3", 1.2)])[0].Faults);

    [Fact]
    public void A_reading_that_no_fault_shows_is_taken_for_a_misreading()
    {
        var suspect = Assert.Single(Diagnosis.Explain(Dictionary, [new("c0", 50)]));
        Assert.Empty(suspect.Faults);
        Assert.Equal(["c0"], suspect.SetAside);
    }

    [Fact]
    public void One_misread_value_does_not_hide_a_mistake_that_the_other_readings_show()
    {
        var suspect = Diagnosis.Explain(Dictionary, [new("c0", 50), new("c1", 0.05), new("c2", 1.2), new("c3", 1.2)])[0];
        Assert.Equal([3], suspect.Faults);
        Assert.Equal(["c0"], suspect.SetAside);
    }

    [Fact]
    public void A_likelier_mistake_ranks_first()
    {
        var likely = new FaultDictionary(
            Dictionary.SetUps,
            Dictionary.Checks,
            [.. Dictionary.Faults.Select((fault, index) => fault with { Prior = index == 1 ? 0.3 : 0.01 })],
            [.. Enumerable.Range(0, 4).Select(Dictionary.ResponseOf)]);
        Assert.Equal([1], Diagnosis.Explain(likely, [new("c0", 1.5)])[0].Faults);
    }

    [Fact]
    public void Three_mistakes_are_named_together_when_no_two_explain_all()
    {
        var apart = SmallDictionary.Of(3, [[0], [1], [2]]);
        Assert.Equal([0, 1, 2], Diagnosis.Explain(apart, [new("c0", 1.5), new("c1", 1.5), new("c2", 1.5)]).First(suspect => suspect.SetAside.Count == 0).Faults);
    }

    [Fact]
    public void The_next_check_is_one_that_tells_the_suspects_apart() =>
        Assert.Equal(1, Next(Dictionary, new("c0", 1.5))!.Check);

    [Fact]
    public void There_is_no_next_check_when_none_tells_the_suspects_apart() =>
        Assert.Null(Next(SmallDictionary.Of(2, [[0, 1]]), new("c0", 1.5)));

    [Fact]
    public void Faults_that_every_check_shows_alike_are_one_ambiguity_group() =>
        Assert.Equal([0, 1], Assert.Single(AmbiguityGroup.Of(SmallDictionary.Of(2, [[0, 1]]), [0, 1])).Faults);

    private static CheckWorth? Next(FaultDictionary dictionary, Reading reading) =>
        NextCheck.Of(dictionary, Diagnosis.Of(dictionary, [reading]), new HashSet<string> { reading.CheckId }, BenchPosition.Start);
}
