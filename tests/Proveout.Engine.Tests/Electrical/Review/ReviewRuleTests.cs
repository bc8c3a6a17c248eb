using Proveout.Engine.Electrical;
using static Proveout.Engine.Tests.Electrical.Review.ReviewMachines;

namespace Proveout.Engine.Tests.Electrical.Review;

/// <summary>Each rule finds the flaw that it is for; that it is silent without the flaw, the unchanged machines show.</summary>
public sealed class ReviewRuleTests
{
    [Fact]
    public void Machines_without_a_flaw_pass_every_rule() => Assert.DoesNotContain(Unchanged, finding => finding.Severity > FindingSeverity.Note);

    [Fact]
    public void Every_rule_has_an_identifier_and_words_of_its_own()
    {
        Assert.Equal(ReviewRules.All.Count, ReviewRules.All.Select(rule => rule.Id).Distinct().Count());
        Assert.Equal(ReviewRules.All.Count, ReviewRules.All.Select(rule => rule.Words).Distinct().Count());
    }

    [Fact]
    public void A_plate_without_its_protective_conductor_is_found() =>
        Assert.Equal(
            ["No protective conductor joins E1 (Plate) to the protective pin of the inlet: an insulation fault leaves its metal live."],
            Oven("exposed-part-bonded", ("W7: {from: X4.2, to: E1.PE, section: 1.5 mm2, colour: green-yellow, length: 300 mm}", "")));

    [Fact]
    public void A_bond_by_a_conductor_of_another_colour_does_not_count() =>
        Assert.Single(Oven("exposed-part-bonded", ("to: E1.PE, section: 1.5 mm2, colour: green-yellow", "to: E1.PE, section: 1.5 mm2, colour: green")));

    [Fact]
    public void A_protective_conductor_thinner_than_the_line_is_found() =>
        Assert.Equal(
            ["Protective conductor W7 from X4.2 to E1.PE has 0.75 mm²; line conductor W4 has 1 mm²."],
            Oven("protective-cross-section", ("to: E1.PE, section: 1.5", "to: E1.PE, section: 0.75")));

    [Theory]
    [InlineData(1.0, 1.0)]
    [InlineData(16, 16)]
    [InlineData(25, 16)]
    [InlineData(35, 16)]
    [InlineData(50, 25)]
    public void Protective_cross_sections_are_those_of_IEC_60364_5_54_table_54_2(double line, double protective) =>
        Assert.Equal(protective, ProtectiveSection.Least(line));

    [Fact]
    public void A_protective_conductor_in_another_colour_is_found() =>
        Assert.Equal(
            ["W7 from X4.2 to E1.PE is a protective conductor and is green."],
            Oven("protective-colour", ("to: E1.PE, section: 1.5 mm2, colour: green-yellow", "to: E1.PE, section: 1.5 mm2, colour: green")));

    [Fact]
    public void A_line_in_green_yellow_is_found() =>
        Assert.Equal(
            ["W4 from F2.2 to E1.L is green-yellow and is no protective conductor."],
            Oven("protective-colour", ("to: E1.L, section: 1.0 mm2, colour: brown", "to: E1.L, section: 1.0 mm2, colour: green-yellow")));

    [Fact]
    public void A_neutral_that_is_not_blue_and_a_line_that_is_are_found() =>
        Assert.Equal(
            ["W4 from F2.2 to E1.L carries line and is blue.", "W5 from X1.N-OUT to E1.N carries neutral and is white."],
            Oven(
                "neutral-colour",
                ("to: E1.L, section: 1.0 mm2, colour: brown", "to: E1.L, section: 1.0 mm2, colour: blue"),
                ("to: E1.N, section: 1.0 mm2, colour: blue", "to: E1.N, section: 1.0 mm2, colour: white")));

    [Fact]
    public void A_breaker_in_the_neutral_alone_is_found()
    {
        var found = Oven(
            "neutral-not-switched-alone",
            ("W1: {from: X1.L-OUT, to: F1.1", "W1: {from: X1.L-OUT, to: Q1.1"),
            ("W2: {from: F1.2, to: Q1.1, section: 1.0 mm2, colour: brown", "W2: {from: X1.N-OUT, to: F1.1, section: 1.0 mm2, colour: blue"),
            ("W5: {from: X1.N-OUT", "W5: {from: F1.2"));
        Assert.Equal(2, found.Length);
        Assert.All(found, sentence => Assert.Contains("of F1 (Breaker) opens the neutral and leaves the line closed", sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void An_inlet_without_a_two_pole_switch_is_found() =>
        Assert.Single(
            Oven("main-switch-two-pole", ("mains-inlet-switched", "mains-inlet-fused"), ("X1.L-OUT", "X1.L"), ("X1.N-OUT", "X1.N")),
            "No switch opens both line and neutral of the mains at X1 to everything behind: a plug that can be turned round may leave the line closed.");

    [Fact]
    public void A_mains_heater_without_a_thermal_cut_off_is_found() =>
        Assert.Equal(
            ["Mains reaches heater E1 (500 W) without passing a thermal cut-off: a switch that fails closed heats without end."],
            Oven(
                "heater-has-cut-off",
                ("W3: {from: Q1.2, to: F2.1", "W3: {from: Q1.2, to: E1.L"),
                ("W4: {from: F2.2, to: E1.L, section: 1.0 mm2, colour: brown, length: 300 mm}", "")));

    [Fact]
    public void A_conductor_thinner_than_its_fuse_asks_is_found() =>
        Assert.Equal(
            ["W1 from X1.L-OUT to F1.1 has 0.75 mm² and bears 8.6 A; the mains at X1 can drive 10 A through it for long."],
            Oven("fuse-protects-conductor", ("to: F1.1, section: 1.0", "to: F1.1, section: 0.75")));

    [Fact]
    public void A_neutral_thinner_than_the_fuses_of_its_loads_ask_is_found() =>
        Assert.Single(Oven("fuses-protect-return", ("to: E1.N, section: 1.0", "to: E1.N, section: 0.25")));

    [Fact]
    public void A_load_that_takes_more_than_its_fuse_is_found() =>
        Assert.Equal(
            ["E1 takes 11.5 A from the mains at X1; the way to it bears 6 A."],
            Oven("fuse-bears-load", ("name: Plate}", "name: Plate, values: {element: 20 ohm +-5 %}}")));

    [Fact]
    public void Mains_and_zero_volt_in_one_route_are_found() =>
        Assert.Equal(
            ["In duct run mains conductors (W2) and extra-low-voltage conductors (W9)."],
            Oven("routes-kept-apart", ("route: [other]", "route: [duct]")));

    [Fact]
    public void A_mains_conductor_below_0_75_square_millimetres_is_found() =>
        Assert.Single(Oven("least-cross-section", ("to: E1.N, section: 1.0", "to: E1.N, section: 0.5")));

    [Fact]
    public void A_heater_conductor_below_0_75_square_millimetres_is_noted() =>
        Assert.Equal(
            ["W3 from A1.HEAT+ to E1.1 is in a heater circuit and has 0.5 mm², less than 0.75 mm²."],
            Head("least-cross-section", ("to: E1.1, section: 0.75", "to: E1.1, section: 0.5")));

    [Fact]
    public void A_control_conductor_below_0_2_square_millimetres_is_noted() =>
        Assert.Equal(
            ["W5 from A1.FA+ to G1.+ is in a control circuit and has 0.14 mm², less than 0.2 mm²."],
            Head("least-cross-section", ("to: G1.+, section: 0.22", "to: G1.+, section: 0.14")));

    [Fact]
    public void A_second_bond_of_zero_volt_is_found() =>
        Assert.Equal(
            ["0 V is bonded to protective earth 2 times, by W11 and W10: load current takes the way over the protective conductor."],
            Oven("zero-volt-bonded-once", ("W10:", "W11: {from: X9.3, to: X4.5, section: 1.5 mm2, colour: green-yellow, length: 300 mm}\nW10:")));

    [Fact]
    public void Zero_volt_without_a_bond_is_fine() =>
        Assert.Empty(Oven("zero-volt-bonded-once", ("W10: {from: X9.2, to: X4.4, section: 1.5 mm2, colour: green-yellow, length: 300 mm}", "")));

    [Fact]
    public void A_bank_at_5_V_leaves_a_24_V_fan_standing() =>
        Assert.Equal(
            ["Jumper FAN-SUPPLY of A1 at 5 V puts 5 V on G1 (Fan), which bears 27.6 V: it does not run."],
            Head("jumper-voltage", ("FAN-SUPPLY: 24 V", "FAN-SUPPLY: 5 V")));

    [Fact]
    public void A_bank_at_24_V_destroys_a_5_V_fan() =>
        Assert.Equal(
            ["Jumper FAN-SUPPLY of A1 at 24 V puts 24 V on G1 (Fan), which bears 5.5 V: it is destroyed."],
            Head("jumper-voltage", ("type: fan-24-40", "type: fan-5-40")));

    [Theory]
    [InlineData("solid-state-relay-25", "3")]
    [InlineData("relay-24v-two-changeover", "11")]
    public void A_bank_at_5_V_may_feed_what_takes_a_wide_range(string type, string terminal) =>
        Assert.Empty(Head("jumper-voltage", ("FAN-SUPPLY: 24 V", "FAN-SUPPLY: 5 V"), ("type: fan-24-40", $"type: {type}"), ("G1.+", $"G1.{terminal}"), ("G1.-", "G1.METAL"), ("W6: {from: A1.FA-, to: G1.METAL, section: 0.22 mm2, colour: black, length: 200 mm}", "")));

    [Fact]
    public void A_bank_without_its_jumper_is_found_when_a_load_hangs_on_it() =>
        Assert.Equal(
            ["Jumper FAN-SUPPLY of A1 is not fitted, and G1 hangs on its bank without voltage."],
            Head("jumper-fitted", (", jumpers: {FAN-SUPPLY: 24 V}", "")));

    [Fact]
    public void A_bank_whose_rail_nothing_else_touches_is_found_without_its_jumper()
    {
        var design = SmallMachine.Read(
            "A1: {type: board, name: Board}\nG1: {type: fan-12-40, name: Fan}",
            "W1: {from: A1.FAN+, to: G1.+, section: 0.22 mm2, colour: red, length: 100 mm}",
            """
            board:
              name: Board
              letter: A
              terminals: {FAN+: {role: output}, 0V: {role: zero-volt}}
              jumpers:
                BANK: {common: FAN+, positions: {12 V: rail}}
              circuit:
                rail-source: {kind: source, between: [rail, 0V], voltage: 12 V}
            """);
        Assert.Equal(["jumper-fitted"], DesignReview.Of(design).Select(finding => finding.Rule));
    }

    [Fact]
    public void Mains_without_an_inlet_is_told() =>
        Assert.Equal(
            ["mains-inlet-known"],
            DesignReview.Of(SmallMachine.Read("X4: {type: earth-bar-6, name: Earth}", mains: SmallMachine.Mains)).Select(finding => finding.Rule));

    [Fact]
    public void A_heater_on_a_fan_output_is_found() =>
        Assert.Contains(
            "A1.FB+ bears 0.5 A; E1 draws 2.5 A through it.",
            Head("terminal-bears-load", ("A1.HEAT+", "A1.FB+"), ("A1.HEAT-", "A1.FB-")));

    [Fact]
    public void Two_conductors_on_one_terminal_are_found() =>
        Assert.Equal(
            ["W7 and W8 land on one terminal, X4.2."],
            Oven("one-conductor-per-terminal", ("W8: {from: X4.3", "W8: {from: X4.2")));

    [Fact]
    public void A_long_thin_lead_loses_more_than_a_twentieth()
    {
        // 2 · 4 m of 0.75 mm² at 26.0 Ω/km (IEC 60228) and 70 °C (factor 1.1965) is 0.249 Ω; with contacts in the way the heater of 9.6 Ω loses more than 2.5 %.
        Assert.Empty(Head("voltage-drop", ("to: E1.1, section: 0.75 mm2, colour: red, length: 200 mm", "to: E1.1, section: 0.75 mm2, colour: red, length: 4000 mm")));
        var sentence = Assert.Single(Head(
            "voltage-drop",
            ("to: E1.1, section: 0.75 mm2, colour: red, length: 200 mm", "to: E1.1, section: 0.75 mm2, colour: red, length: 12000 mm"),
            ("to: E1.2, section: 0.75 mm2, colour: white, length: 200 mm", "to: E1.2, section: 0.75 mm2, colour: white, length: 12000 mm")));
        Assert.StartsWith("On the way from the 24 V of T1 to E1 and back, ", sentence, StringComparison.Ordinal);
    }
}
