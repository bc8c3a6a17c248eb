using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Faults;

/// <summary>What holds of every wiring mistake of every sample machine.</summary>
public sealed class FaultUniverseTests(ITestOutputHelper output)
{
    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_mistake_has_an_identifier_of_its_own(string sample) =>
        Assert.Distinct(FaultsOf(sample).Select(fault => fault.Fault.Id));

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_mistake_does_something_and_changes_an_element_at_most_once(string sample) =>
        Assert.All(FaultsOf(sample), fault =>
        {
            Assert.NotEmpty(fault.Changes);
            Assert.Distinct(fault.Changes.Where(change => change is not Join).Select(ElementOf));
        });

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_resistance_that_a_mistake_brings_lies_between_limits_above_zero(string sample) =>
        Assert.All(FaultsOf(sample).SelectMany(fault => fault.Changes), change =>
        {
            if (change is Join join)
                Assert.True(join.LowOhms > 0 && join.LowOhms <= join.HighOhms && join.A != join.B, $"{join}");
            if (change is Replace replace)
                Assert.True(replace.LowOhms > 0 && replace.LowOhms <= replace.HighOhms, $"{replace}");
            if (change is AddInSeries series)
                Assert.True(series.LowOhms > 0 && series.LowOhms <= series.HighOhms, $"{series}");
        });

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_mistake_says_what_is_wrong_what_follows_and_what_else_shows_it(string sample) =>
        Assert.All(FaultsOf(sample), fault => Assert.True(
            fault.Fault.Sentence.EndsWith('.') && fault.Fault.Consequence.EndsWith('.') && fault.Fault.OtherEvidence.EndsWith('.') && fault.Fault.Prior is > 0 and < 1,
            fault.Fault.Id));

    // A mistake is what a person could do at a place: some fifteen to twenty for each conductor, not hundreds.
    [Theory]
    [MemberData(nameof(Samples))]
    public void There_are_no_more_mistakes_than_a_person_could_make(string sample)
    {
        var faults = FaultsOf(sample);
        foreach (var kind in faults.CountBy(fault => fault.Fault.Kind))
            output.WriteLine($"{kind.Key} {kind.Value}");

        Assert.InRange(faults.Length, 0, 25 * Repository.Design(sample).Conductors.Count);
    }

    private static WiringFault[] FaultsOf(string sample) =>
        [.. WiringFaultRules.Generate(new WiringContext(WiringNetworkBuilder.Build(Repository.Design(sample))))];

    private static int ElementOf(ElementChange change) => change switch
    {
        Cut cut => cut.Element,
        Invert invert => invert.Element,
        AddInSeries series => series.Element,
        Replace replace => replace.Element,
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change of another kind."),
    };
}
