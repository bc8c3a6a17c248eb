using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class WhySuspectedTests
{
    private static readonly FaultDictionary Dictionary = HandMade.Of(
        3, 0, new() { ["c0"] = new(3, 4), ["c1"] = HandMade.Open }, new() { ["c0"] = new(3, 5) });

    private static readonly Reading[] Readings = [new("c0", 3.6), new("c2", 0.05)];

    [Fact]
    public void The_readings_that_a_suspect_explains_and_the_sound_machine_does_not_are_named()
    {
        var fitting = Assert.Single(Of(0).Fitting);
        Assert.Equal((0, 3.6, new ReadingInterval(3, 4)), (fitting.Check, fitting.Value, fitting.Shown));
    }

    [Fact]
    public void What_would_rule_a_suspect_out_is_a_check_where_its_rivals_surely_differ()
    {
        var ruling = Of(0).RuledOutBy!;
        Assert.Equal(1, ruling.Check);
        Assert.Equal(HandMade.Open, ruling.Shown);
        Assert.Equal(new ReadingInterval(0, 0.1), ruling.Otherwise);
    }

    [Fact]
    public void A_check_already_read_is_not_named_again() =>
        Assert.Null(Of(0, [.. Readings, new("c1", ReadingInterval.OverRange)]).RuledOutBy);

    [Fact]
    public void Nothing_rules_out_a_suspect_whose_only_rivals_are_its_likes()
    {
        var alike = HandMade.Of(2, 0, new() { ["c0"] = HandMade.Open, ["c1"] = HandMade.Open }, new() { ["c0"] = HandMade.Open, ["c1"] = HandMade.Open });
        Reading[] readings = [new("c0", ReadingInterval.OverRange)];
        var posterior = new Posterior(true, 0, 0, [new([0], 0.5, []), new([1], 0.5, [])]);
        Assert.Null(new WhySuspected(alike, posterior, readings).Of([0], [[0], [1]]).RuledOutBy);
    }

    private static SuspectReasons Of(int fault, Reading[]? readings = null) =>
        new WhySuspected(Dictionary, Diagnosis.Of(Dictionary, readings ?? Readings), readings ?? Readings).Of([fault], [[fault]]);
}
