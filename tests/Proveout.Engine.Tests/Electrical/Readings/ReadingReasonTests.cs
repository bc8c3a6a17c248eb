using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Readings;

public sealed class ReadingReasonTests
{
    private static readonly CheckPoint LinePin = new("X1", "L-PIN", "");
    private static readonly CheckPoint NeutralPin = new("X1", "N-PIN", "");

    private static readonly MachineDesign Oven = SmallMachine.Read(
        """
        X1: {type: mains-inlet-fused, name: Inlet}
        E1: {type: mains-silicone-heater, name: Plate}
        X2: {type: lever-terminal-3, name: Line}
        """,
        """
        W3: {from: X1.L, to: X2.1, section: 1.0 mm2, colour: brown, length: 300 mm}
        W4: {from: X2.2, to: E1.L, section: 1.0 mm2, colour: brown, length: 300 mm}
        W5: {from: X1.N, to: E1.N, section: 1.0 mm2, colour: blue, length: 300 mm}
        W6: {from: X1.PE, to: E1.PE, section: 1.0 mm2, colour: green-yellow, length: 300 mm}
        """,
        mains: SmallMachine.Mains);

    [Fact]
    public void A_load_is_reached_through_conductors_fuse_and_terminal_in_order() =>
        Assert.Equal(
            "Through plug PINS of X1, fuse of X1, W3, X2, W4, the element of E1 (106 Ω), W5, X1 and plug PINS of X1.",
            Mated(Oven).Between(LinePin, NeutralPin));

    [Fact]
    public void A_load_below_a_hundred_ohm_warns_of_the_buzzer()
    {
        var design = SmallMachine.Read("E1: {type: cartridge-heater-24-40, name: Heater}");
        Assert.Equal(
            "Through the element of E1 (14.4 Ω). A buzzer sounds here too, so read the number.",
            Mated(design).Between(new CheckPoint("E1", "1", ""), new CheckPoint("E1", "2", "")));
    }

    [Fact]
    public void A_bond_is_metal_all_the_way() =>
        Assert.Equal(
            "Metal all the way, through plug PINS of X1, X1, W6 and E1.",
            Mated(Oven).Between(new CheckPoint("X1", "PE-PIN", ""), new CheckPoint("E1", "PLATE", "")));

    [Fact]
    public void Insulation_is_named_when_only_it_lies_between() =>
        Assert.Equal(
            "Only insulation lies between: the insulation element-to-plate of E1 (1.00 MΩ or more).",
            Mated(Oven).Between(new CheckPoint("E1", "L", ""), new CheckPoint("E1", "PLATE", "")));

    [Fact]
    public void Nothing_between_two_terminals_says_so() =>
        Assert.Equal(
            "Nothing joins the two: the meter shows OL.",
            Apart(Oven).Between(LinePin, new CheckPoint("X1", "L-PIN", "pins")));

    [Fact]
    public void A_second_load_of_like_size_is_told_and_one_of_ten_times_the_size_is_not()
    {
        var design = SmallMachine.Read(
            """
            X1: {type: lever-terminal-3, name: One}
            X2: {type: lever-terminal-3, name: Two}
            R1: {type: load, name: First}
            R2: {type: load, name: Second, values: {body: 300 ohm +-1 %}}
            R3: {type: load, name: Third, values: {body: 2 kohm +-1 %}}
            """,
            """
            W1: {from: X1.1, to: R1.A, section: 1.0 mm2, colour: red, length: 300 mm}
            W2: {from: X1.2, to: R2.A, section: 1.0 mm2, colour: red, length: 300 mm}
            W3: {from: X1.3, to: R3.A, section: 1.0 mm2, colour: red, length: 300 mm}
            W4: {from: X2.1, to: R1.B, section: 1.0 mm2, colour: red, length: 300 mm}
            W5: {from: X2.2, to: R2.B, section: 1.0 mm2, colour: red, length: 300 mm}
            W6: {from: X2.3, to: R3.B, section: 1.0 mm2, colour: red, length: 300 mm}
            """,
            """
            load:
              name: Load
              letter: R
              terminals: {A: {role: passive}, B: {role: passive}}
              circuit:
                body: {kind: resistor, between: [A, B], value: 100 ohm +-1 %}
            """);
        var first = Mated(design).Between(new CheckPoint("R1", "A", ""), new CheckPoint("R1", "B", ""));
        var second = Mated(design).Between(new CheckPoint("R2", "A", ""), new CheckPoint("R2", "B", ""));
        Assert.Equal("Through the body of R1 (100 Ω), and beside it through W1, X1, W2, the body of R2 (300 Ω), W5, X2 and W4.", first);
        Assert.StartsWith("Through W2, X1, W1, the body of R1 (100 Ω), W4, X2 and W5, and beside it through the body of R2 (300 Ω)", second, StringComparison.Ordinal);
    }

    [Fact]
    public void A_junction_conducts_one_way_and_blocks_the_other()
    {
        var design = SmallMachine.Read("Q1: {type: solid-state-relay-25, name: Relay}");
        Assert.Equal(
            "Only junctions lie between: the junction control of Q1, and they conduct with the red lead here.",
            Mated(design).Between(new CheckPoint("Q1", "3", ""), new CheckPoint("Q1", "4", "")));
        Assert.Equal(
            "Only junctions lie between: the junction control of Q1; with the red lead here control of Q1 blocks.",
            Mated(design).Between(new CheckPoint("Q1", "4", ""), new CheckPoint("Q1", "3", "")));
    }

    [Fact]
    public void An_unpredictable_port_with_a_capacitor_says_both()
    {
        var design = SmallMachine.Read("T1: {type: converter-24-to-5, name: Converter}");
        Assert.Equal(
            "Through the port output-load of T1 (it differs from design to design). The reading climbs while output-capacitor of T1 charges: wait until it stands.",
            Mated(design).Between(new CheckPoint("T1", "OUT+", ""), new CheckPoint("T1", "OUT-", "")));
    }

    [Fact]
    public void The_same_port_the_other_way_round_tells_of_the_rectifier_beside_it()
    {
        var design = SmallMachine.Read("T1: {type: converter-24-to-5, name: Converter}");
        Assert.Contains(
            "and beside it through the junction output-reverse of T1.",
            Mated(design).Between(new CheckPoint("T1", "OUT-", ""), new CheckPoint("T1", "OUT+", "")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_solid_state_relay_is_told_to_stay_open()
    {
        var design = SmallMachine.Read("Q1: {type: solid-state-relay-25, name: Relay}");
        Assert.Equal(
            "Only insulation lies between: the insulation load of Q1 (1.00 MΩ or more). A solid-state relay stays open to a meter even while commanded on; only a shorted one reads low.",
            Mated(design).Between(new CheckPoint("Q1", "1", ""), new CheckPoint("Q1", "2", "")));
    }

    [Fact]
    public void A_motor_winding_warns_of_warm_copper_and_of_the_buzzer()
    {
        var design = SmallMachine.Read("M1: {type: stepper-42-40, name: Motor}");
        Assert.EndsWith(
            "Copper reads 4 % more for every 10 K that it is warmer. A buzzer sounds here too, so read the number.",
            Mated(design).Between(new CheckPoint("M1", "1A", ""), new CheckPoint("M1", "1B", "")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_high_resistance_warns_of_fingers()
    {
        var design = SmallMachine.Read("B1: {type: ntc-100k, name: Sensor}");
        Assert.EndsWith(
            "Keep fingers off the tips.",
            Mated(design).Between(new CheckPoint("B1", "1", ""), new CheckPoint("B1", "2", "")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_way_names_the_ends_of_its_metal()
    {
        var strips = string.Join('\n', Enumerable.Range(1, 9).Select(number => $"X{number}: {{type: feed-through-2, name: Strip}}"));
        var wires = string.Join('\n', Enumerable.Range(1, 8).Select(number =>
            $"W{number}: {{from: X{number}.2, to: X{number + 1}.1, section: 1.0 mm2, colour: red, length: 100 mm}}"));
        Assert.Equal(
            "Metal all the way, through X1, W1, …, W8 and X9.",
            Mated(SmallMachine.Read(strips, wires)).Between(new CheckPoint("X1", "1", ""), new CheckPoint("X9", "2", "")));
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Reasons_agree_with_what_every_check_of_the_samples_expects(string sample)
    {
        var design = Repository.Design(sample);
        var campaign = new WiringCampaign(design);
        var reasons = DeadSetUps.Of(design).ToDictionary(setUp => setUp.Text.Id, setUp => new ReadingReason(campaign.Context.Wiring, setUp.State));
        foreach (var check in campaign.Run(TestContext.Current.CancellationToken).Checks)
        {
            var reason = reasons[check.SetUp].Between(check.Points[0], check.Points[1]);
            if (reason.StartsWith("Nothing", StringComparison.Ordinal))
                Assert.True(check.Expectation.Contains(ReadingInterval.OverRange), $"{check.Id}: {reason}");
            else if (reason.StartsWith("Metal", StringComparison.Ordinal))
                Assert.True(check.Expectation.High < 5, $"{check.Id}: {reason}");
            else if (reason.StartsWith("Through", StringComparison.Ordinal))
                Assert.False(check.Expectation.IsOverRangeOnly, $"{check.Id}: {reason}");
        }
    }

    private static ReadingReason Mated(MachineDesign design) => new(WiringNetworkBuilder.Build(design), new MachineState(false, []));

    private static ReadingReason Apart(MachineDesign design) => new(WiringNetworkBuilder.Build(design), new MachineState(true, []));
}
