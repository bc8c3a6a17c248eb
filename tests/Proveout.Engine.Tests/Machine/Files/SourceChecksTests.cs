using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Electrical;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Inner circuits that contradict themselves, and machines that are empty or too large.</summary>
public sealed class SourceChecksTests
{
    [Theory]
    [InlineData("{kind: source, between: [P, M], voltage: 5 V}", "sources-contradict")]
    [InlineData("{kind: source, between: [M, P], voltage: 12 V}", "sources-contradict")]
    [InlineData("{kind: source, between: [P, M], voltage: 12 V}", "")]
    [InlineData("{kind: resistor, between: [P, M], value: 0 ohm .. 5 ohm}", "out-of-range")]
    [InlineData("{kind: resistor, between: [P, M], value: -5 ohm .. 5 ohm}", "out-of-range")]
    [InlineData("{kind: resistor, between: [P, P], value: 5 ohm +-5 %}", "loop")]
    public void A_second_element_that_contradicts_the_first_source_is_reported(string second, string rule)
    {
        var text =
            $$$"""
            format: proveout-parts 1
            types:
              pack:
                name: Pack
                letter: G
                terminals: {P: {role: positive}, M: {role: zero-volt}}
                circuit:
                  first: {kind: source, between: [P, M], voltage: 12 V}
                  second: {{{second}}}
            """;
        var rules = CatalogueReader.Read([new SourceText("parts.yaml", text)]).Diagnostics.Select(diagnostic => diagnostic.Rule);
        Assert.Equal(rule.Length == 0 ? [] : [rule], rules);
    }

    [Fact]
    public void Sources_in_series_that_add_up_do_not_contradict_the_one_across_them()
    {
        const string Text =
            """
            format: proveout-parts 1
            types:
              pack:
                name: Pack
                letter: G
                terminals: {P: {role: positive}, T: {role: positive}, M: {role: zero-volt}}
                circuit:
                  lower: {kind: source, between: [T, M], voltage: 5 V}
                  upper: {kind: source, between: [P, T], voltage: 7 V}
                  whole: {kind: source, between: [P, M], voltage: 12 V}
            """;
        Assert.Empty(CatalogueReader.Read([new SourceText("parts.yaml", Text)]).Diagnostics);
    }

    [Fact]
    public void A_part_without_conductors_has_checks_or_none_but_no_fault_of_wiring()
    {
        var campaign = new WiringCampaign(SmallMachine.Read("E1: {type: plate-heater-24, name: Heater}"));
        Assert.DoesNotContain(campaign.Faults, fault => fault.Fault.Kind is "conductor-missing" or "ends-swapped");
        Assert.NotEmpty(campaign.Run().Checks);
    }

    [Fact]
    public void A_machine_of_fifty_thousand_terminals_is_refused_with_a_mend()
    {
        var design = SmallMachine.Read("E1: {type: plate-heater-24, name: Heater}");
        var many = design with { Parts = Enumerable.Range(1, 17_000).Select(number => design.Parts[0] with { Designation = $"E{number}" }).ToValueList() };

        Assert.Null(CampaignSize.Refuse(design));
        var refusal = CampaignSize.Refuse(many)!;
        Assert.Contains("51000 terminals", refusal.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refusal.Mend);
        Assert.Throws<ArgumentException>(() => new WiringCampaign(many));
    }
}
