using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Campaign.Catching;

/// <summary>Verdicts of diode tests that hang on junctions away from the leads.</summary>
public sealed class DiodeVerdictTests
{
    // The two of the strip in a row may show over range (1.98 V, 1 % and 3 mV more), but not less than 0.98 V; the single one shows 0.92 V at most.
    private const string Types =
        """
        socket:
          name: Socket
          letter: X
          terminals: {"+": {role: positive}, "-": {role: zero-volt}}
          connectors: {PAIR: {terminals: ["+", "-"], family: lock, pluggable: true}}
          circuit:
            between: {kind: insulation, between: ["+", "-"], at-least: 1 Mohm}
        strip:
          name: Strip of lamps
          letter: P
          terminals: {"1": {role: passive}, "2": {role: passive}, "3": {role: passive}}
          connectors: {ROW: {terminals: ["1", "2", "3"], family: row, pluggable: false}}
          circuit:
            first: {kind: diode, between: ["1", inner], forward: 0.5 V .. 0.99 V}
            second: {kind: diode, between: [inner, "3"], forward: 0.5 V .. 0.99 V}
            single: {kind: diode, between: ["2", "3"], forward: 0.5 V .. 0.9 V}
        lamp:
          name: Lamp
          letter: P
          terminals: {"+": {role: positive}, "-": {role: zero-volt}}
          connectors: {LEADS: {terminals: ["+", "-"], family: moulded, pluggable: false}}
          circuit:
            light: {kind: diode, between: ["+", "-"], forward: 0.4 V .. 0.6 V}
        """;

    [Fact]
    public void A_conductor_missing_between_two_lamps_in_a_row_is_caught_at_their_ends()
    {
        var campaign = new WiringCampaign(SmallMachine.Read(
            """
            X1: {type: socket, name: Socket}
            P1: {type: lamp, name: First lamp}
            P2: {type: lamp, name: Second lamp}
            """,
            """
            W1: {from: X1.+, to: P1.+, section: 0.25 mm2, colour: red, length: 1 m}
            W2: {from: P1.-, to: P2.+, section: 0.25 mm2, colour: red, length: 1 m}
            W3: {from: P2.-, to: X1.-, section: 0.25 mm2, colour: black, length: 1 m}
            """,
            Types));

        Assert.Contains(CaughtBy(campaign, "conductor-missing:W2"), IsAtSocket);
    }

    [Fact]
    public void An_end_that_leads_around_one_of_two_junctions_is_caught_by_what_is_shown_too_little()
    {
        var campaign = new WiringCampaign(SmallMachine.Read(
            """
            X1: {type: socket, name: Socket}
            P1: {type: strip, name: Strip}
            """,
            """
            W1: {from: X1.+, to: P1.1, section: 0.25 mm2, colour: red, length: 1 m}
            W3: {from: P1.3, to: X1.-, section: 0.25 mm2, colour: black, length: 1 m}
            """,
            Types));

        Assert.Contains(CaughtBy(campaign, "end-on-neighbour:W1", "P1.2"), IsAtSocket);
    }

    // The verdicts are those of the whole simulation, too.
    private static Check[] CaughtBy(WiringCampaign campaign, params string[] parts)
    {
        var (whole, verdicts) = (campaign.Run(TestContext.Current.CancellationToken), campaign.RunVerdicts(cancellation: TestContext.Current.CancellationToken));
        var fault = whole.Faults.Index().Single(item => parts.All(part => item.Item.Id.Contains(part, StringComparison.Ordinal))).Index;
        Assert.Equal(whole.ChecksThatCatch(fault), verdicts.ChecksThatCatch(fault));
        return [.. verdicts.ChecksThatCatch(fault).Select(check => verdicts.Checks[check])];
    }

    private static bool IsAtSocket(Check check) => check.Kind == "diode-test" && check.Points.All(point => point.Subject == "X1");
}
