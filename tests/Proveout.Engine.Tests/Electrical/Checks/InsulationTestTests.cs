using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Where the insulation test is offered, and what it catches: IEC 60204-1 clause 18.3.</summary>
public sealed class InsulationTestTests
{
    private static readonly Lazy<(WiringCampaign Campaign, FaultDictionary Dictionary)> Flagship = new(() =>
    {
        var campaign = new WiringCampaign(Repository.Design("alderbrook"));
        return (campaign, campaign.Run());
    });

    [Theory]
    [InlineData("alderbrook", true)]
    [InlineData("quarrymoor", true)]
    [InlineData("pennywort", false)]
    public void It_is_offered_where_mains_enters_and_nowhere_else(string sample, bool isOffered)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        Assert.Equal(isOffered, campaign.Run().Checks.Any(check => check.Kind == "insulation-test"));
    }

    [Fact]
    public void Its_leads_touch_the_inlet_only_with_a_caution_before_the_step_and_at_least_a_megohm()
    {
        var checks = Flagship.Value.Dictionary.Checks.Where(check => check.Kind == "insulation-test").ToArray();
        Assert.NotEmpty(checks);
        Assert.All(checks, check =>
        {
            Assert.All(check.Points, point => Assert.Equal("X1", point.Subject));
            Assert.Contains("CAUTION: 500 V", check.Instruction, StringComparison.Ordinal);
            Assert.True(check.Expectation.Low >= 1e6);
            Assert.True(double.IsPositiveInfinity(check.Expectation.High));
        });
    }

    [Fact]
    public void It_catches_a_mains_conductor_on_the_protective_conductor()
    {
        var (campaign, dictionary) = Flagship.Value;
        var test = dictionary.Checks.Index().First(item => item.Item.Kind == "insulation-test").Index;
        Assert.Contains(
            Enumerable.Range(0, campaign.Faults.Count),
            fault => dictionary.IsSurelyCaught(fault, test) && dictionary.Faults[fault].Severity == Severity.Shock);
    }

    [Fact]
    public void It_is_not_offered_where_a_junction_leads_from_mains_to_a_signal()
    {
        const string Leaky =
            """
            leaky:
              name: Part that does not part mains from signals
              letter: A
              terminals: {L: {role: line, voltage: 250 V}, N: {role: neutral, voltage: 250 V}, S: {role: signal, voltage: 5 V}}
              circuit:
                tap: {kind: diode, between: [L, S], forward: 0.4 V .. 0.7 V}
                load: {kind: resistor, between: [L, N], value: 1 kohm +-5 %}
            """;
        var design = SmallMachine.Read(
            """
            X1: {type: mains-inlet-fused, name: Inlet}
            A1: {type: leaky, name: Part}
            """,
            """
            W1: {from: X1.L, to: A1.L, section: 1 mm2, colour: brown, length: 1 m}
            W2: {from: X1.N, to: A1.N, section: 1 mm2, colour: blue, length: 1 m}
            """,
            Leaky,
            mains: SmallMachine.Mains);
        Assert.DoesNotContain(new WiringCampaign(design).Run().Checks, check => check.Kind == "insulation-test");
    }
}
