using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Readings;

public sealed class ExpectedReadingsTests
{
    // The meter's own error in the diode test: 1 % and 3 mV.
    private const double MeterVolts = 0.02;

    [Fact]
    public void A_silicon_diode_shows_its_forward_voltage_one_way_and_OL_the_other()
    {
        // Silicon 0.45 to 0.7 V in the diode test; common practice.
        var (forward, reverse) = Read("d: {kind: diode, between: [A, B], forward: 0.45 V .. 0.7 V}");
        Assert.Equal(0.45, forward.DiodeVolts.Low, MeterVolts);
        Assert.Equal(0.70, forward.DiodeVolts.High, MeterVolts);
        Assert.True(reverse.DiodeVolts.IsOverRangeOnly);
        Assert.Equal("OL (over range)", reverse.DiodeInWords);
        Assert.True(reverse.Ohms.IsOverRangeOnly);
    }

    [Fact]
    public void Two_light_emitting_diodes_in_series_add_up_or_pass_the_range()
    {
        var (forward, reverse) = Read(
            """
            d1: {kind: diode, between: [A, m], forward: 0.8 V .. 1.2 V}
            d2: {kind: diode, between: [m, B], forward: 0.8 V .. 1.2 V}
            """);
        Assert.Equal(1.6, forward.DiodeVolts.Low, MeterVolts);
        Assert.Equal(ReadingInterval.OverRange, forward.DiodeVolts.High);
        Assert.True(reverse.DiodeVolts.IsOverRangeOnly);
    }

    [Fact]
    public void White_lamps_beyond_the_range_show_OL_both_ways()
    {
        var (forward, _) = Read(
            """
            d1: {kind: diode, between: [A, m], forward: 2.5 V .. 3 V}
            d2: {kind: diode, between: [m, B], forward: 2.5 V .. 3 V}
            """);
        Assert.True(forward.DiodeVolts.IsOverRangeOnly);
    }

    [Fact]
    public void A_bridge_rectifier_kicks_and_shows_OL_both_ways_on_its_alternating_side()
    {
        var (forward, reverse) = Read(Bridge);
        Assert.True(forward.DiodeVolts.IsOverRangeOnly);
        Assert.True(reverse.DiodeVolts.IsOverRangeOnly);
    }

    [Fact]
    public void A_bridge_rectifier_shows_two_junctions_from_minus_to_plus_and_tells_to_wait_for_the_capacitor()
    {
        var (plusFirst, minusFirst) = Read(Bridge, "P", "M");
        Assert.True(plusFirst.DiodeVolts.IsOverRangeOnly);
        Assert.Equal(0.9, minusFirst.DiodeVolts.Low, MeterVolts);
        Assert.Equal(1.4, minusFirst.DiodeVolts.High, MeterVolts);
        Assert.Contains("The reading climbs while c of N1 charges", minusFirst.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resistor_shows_its_resistance_times_about_a_milliampere()
    {
        var (forward, reverse) = Read("r: {kind: resistor, between: [A, B], value: 106 ohm +-0.1 %}");
        Assert.True(forward.DiodeVolts.Contains(0.106));
        Assert.Equal(0.053, forward.DiodeVolts.Low, 0.005);
        Assert.Equal(0.159, forward.DiodeVolts.High, 0.006);
        Assert.Equal(forward.DiodeVolts, reverse.DiodeVolts);
        Assert.True(forward.Ohms.Contains(106));
    }

    [Fact]
    public void A_hundred_kilohm_is_over_range_in_the_diode_test()
    {
        var (forward, _) = Read("r: {kind: resistor, between: [A, B], value: 100 kohm +-5 %}");
        Assert.True(forward.DiodeVolts.IsOverRangeOnly);
    }

    [Theory]
    [InlineData("motion-controller-7", "VP+", "VP-")]
    [InlineData("tool-head-board", "24V", "0V")]
    [InlineData("stepper-driver", "V+", "V-")]
    public void A_board_measured_backwards_shows_the_clamp_at_its_supply(string type, string plus, string zero)
    {
        var design = SmallMachine.Read($"A1: {{type: {type}, name: Board}}");
        var (_, backwards) = Apart(design).Between(Pin(design, "A1", plus), Pin(design, "A1", zero));
        Assert.Equal(0.3, backwards.DiodeVolts.Low, MeterVolts);
        Assert.Equal(0.7, backwards.DiodeVolts.High, MeterVolts);
    }

    [Fact]
    public void Corners_of_a_meshed_port_lie_inside_what_is_expected()
    {
        // Circuits/wheatstone-with-junction.cir, both corners from ngspice.
        var (forward, _) = Read(
            """
            r1: {kind: resistor, between: [A, x], value: 200 ohm +-5 %}
            r2: {kind: resistor, between: [x, B], value: 2 kohm +-5 %}
            r3: {kind: resistor, between: [A, y], value: 2 kohm +-5 %}
            r4: {kind: resistor, between: [y, B], value: 200 ohm +-5 %}
            d: {kind: diode, between: [x, y], forward: 0.15 V .. 0.35 V}
            """);
        Assert.InRange(0.2954548, forward.DiodeVolts.Low, 0.2954548 * 1.02);
        Assert.InRange(forward.DiodeVolts.High, 0.8590917, 1.7);
    }

    [Fact]
    public void Plugs_apart_part_the_pin_from_the_plug()
    {
        var design = SmallMachine.Read(
            """
            A1: {type: tool-head-board, name: Board}
            E1: {type: cartridge-heater-24-60, name: Heater}
            """,
            """
            W1: {from: A1.HEAT+, to: E1.1, section: 0.5 mm2, colour: red, length: 200 mm}
            W2: {from: A1.HEAT-, to: E1.2, section: 0.5 mm2, colour: white, length: 200 mm}
            """);
        var (plug, _) = Apart(design).Between(new CheckPoint("A1", "HEAT+", "plug"), new CheckPoint("A1", "HEAT-", "plug"));
        Assert.Equal("Through W1, the element of E1 (9.60 Ω) and W2. A buzzer sounds here too, so read the number.", plug.Reason);
        Assert.True(plug.Ohms.Contains(9.6));
        var (pins, _) = Apart(design).Between(new CheckPoint("A1", "HEAT+", "pins"), new CheckPoint("A1", "HEAT-", "pins"));
        Assert.False(pins.Ohms.Contains(9.6));
    }

    private const string Bridge =
        """
        d1: {kind: diode, between: [A, P], forward: 0.45 V .. 0.7 V}
        d2: {kind: diode, between: [B, P], forward: 0.45 V .. 0.7 V}
        d3: {kind: diode, between: [M, A], forward: 0.45 V .. 0.7 V}
        d4: {kind: diode, between: [M, B], forward: 0.45 V .. 0.7 V}
        c: {kind: capacitor, between: [P, M], value: 470 uF}
        """;

    private static (ExpectedReading RedOnFirst, ExpectedReading RedOnSecond) Read(string circuit, string first = "A", string second = "B")
    {
        var type =
            $$$"""
            one:
              name: One
              letter: N
              terminals: {A: {role: passive}, B: {role: passive}, P: {role: passive}, M: {role: passive}}
              circuit:
            {{{string.Join(Environment.NewLine, circuit.Split('\n').Select(line => "    " + line))}}}
            """;
        var design = SmallMachine.Read("N1: {type: one, name: One}", types: type);
        return Apart(design).Between(new CheckPoint("N1", first, ""), new CheckPoint("N1", second, ""));
    }

    private static ExpectedReadings Apart(MachineDesign design) => new(design, DeadSetUps.Of(design)[0]);

    private static CheckPoint Pin(MachineDesign design, string part, string terminal) =>
        new(part, terminal, design.FindPart(part)!.Type.ConnectorOf(terminal) is { Pluggable: true } ? "pins" : "");
}
