using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>What diode tests may show under faults, against every pattern of conduction solved densely.</summary>
public sealed class DiodeFaultTests
{
    private const string Lamp =
        """
        lamp:
          name: Lamp with moulded leads
          letter: P
          terminals: {"+": {role: positive, reachable: false}, "-": {role: zero-volt, reachable: false}}
          connectors: {LEADS: {terminals: ["+", "-"], family: moulded, pluggable: false}}
          circuit:
            light: {kind: diode, between: ["+", "-"], forward: 1.5 V .. 1.9 V}
        socket:
          name: Socket
          letter: X
          terminals: {"+": {role: positive}, "-": {role: zero-volt}}
          connectors: {PAIR: {terminals: ["+", "-"], family: lock, pluggable: true}}
        """;

    [Fact]
    public void A_lamp_the_wrong_way_round_is_surely_caught_by_the_diode_test_and_by_nothing_else()
    {
        var campaign = new WiringCampaign(SmallMachine.Read(
            """
            P1: {type: lamp, name: Lamp}
            X1: {type: socket, name: Socket}
            """,
            """
            W1: {from: X1.+, to: P1.+, section: 0.25 mm2, colour: red, length: 1 m}
            W2: {from: X1.-, to: P1.-, section: 0.25 mm2, colour: black, length: 1 m}
            """,
            Lamp));
        var dictionary = campaign.Run();
        var reversed = campaign.Faults.Index().First(item => item.Item.Fault.Kind == "part-reversed" && item.Item.Fault.Subjects.Contains("P1")).Index;

        Assert.NotEmpty(dictionary.ChecksThatCatch(reversed));
        Assert.All(dictionary.ChecksThatCatch(reversed), check => Assert.Equal("diode-test", dictionary.Checks[check].Kind));
    }

    [Theory]
    [InlineData("alderbrook", "A1", "W205")]
    [InlineData("alderbrook", "A3", "W602")]
    public void A_board_input_the_wrong_way_round_is_surely_caught_by_a_diode_test_on_a_sample(string sample, string part, string conductor)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        var dictionary = campaign.Run();
        var reversed = campaign.Faults.Index()
            .First(item => item.Item.Fault.Kind == "part-reversed" && item.Item.Fault.Subjects.Contains(part) && item.Item.Fault.Subjects.Contains(conductor)).Index;

        Assert.Contains(dictionary.ChecksThatCatch(reversed), check => dictionary.Checks[check].Kind == "diode-test");
    }

    [Fact]
    public void No_random_circuit_with_a_fault_reads_outside_what_the_dictionary_says()
    {
        var random = new Random(20261127);
        var compared = 0;
        for (var trial = 0; trial < 25; trial++)
            compared += Compare(random);
        Assert.InRange(compared, 300, int.MaxValue);
    }

    // Random faults at random diode tests, each at random values inside all tolerances.
    private static int Compare(Random random)
    {
        var campaign = new WiringCampaign(RandomMachine(random));
        var dictionary = campaign.Run();
        var setUps = DeadSetUps.Of(campaign.Context.Design);
        int[] tests = [.. Enumerable.Range(0, dictionary.Checks.Count).Where(check => dictionary.Checks[check].Kind == "diode-test")];
        var compared = 0;
        for (var turn = 0; turn < 40 && tests.Length > 0; turn++)
        {
            var (check, fault) = (tests[random.Next(tests.Length)], random.Next(campaign.Faults.Count));
            var state = setUps.First(setUp => setUp.Text.Id == dictionary.Checks[check].SetUp).State;
            if (Reading(campaign, state, campaign.Faults[fault], campaign.NodesOf(check), random) is not { } volts)
                continue;
            compared++;
            var shown = dictionary.IntervalOf(fault, check);
            var isOpen = volts > DiodeTestMode.HandHeld.MostOpenVolts;
            Assert.True(
                shown.Contains(isOpen ? ReadingInterval.OverRange : volts) || (volts > DiodeTestMode.HandHeld.LeastOpenVolts && double.IsPositiveInfinity(shown.High)),
                FormattableString.Invariant($"{volts} V at {dictionary.Checks[check].Title} under {campaign.Faults[fault].Fault.Id} is not in {shown}."));
        }

        return compared;
    }

    private static double? Reading(WiringCampaign campaign, MachineState state, WiringFault fault, (int Red, int Black) port, Random random)
    {
        var wiring = campaign.Context.Wiring;
        var faulty = new FaultyWiring(wiring, state, fault);
        Assert.Equal(faulty.Low.Length, faulty.High.Length);
        var resistors = faulty.Low.Zip(faulty.High, (low, high) => (low.A, low.B, Between(random, low.Ohms, high.Ohms)))
            .Concat(wiring.Elements.Where(element => element.Part is Insulation).Select(element => (element.A, element.B, ((Insulation)element.Part!).AtLeast.Ohms * random.Next(1, 100))))
            .ToArray();
        var junctions = wiring.Elements
            .Where(element => element.Part is Diode)
            .Select(element => (element.A, element.B, Between(random, ((Diode)element.Part!).ForwardLow.Volts, ((Diode)element.Part!).ForwardHigh.Volts)))
            .ToArray();
        return ConductionStates.Volts(wiring.Nodes.Count, resistors, junctions, port.Red, port.Black, Between(random, DiodeTestMode.HandHeld.LeastAmperes, DiodeTestMode.HandHeld.MostAmperes));
    }

    private static double Between(Random random, double low, double high) => random.Next(4) switch
    {
        0 => low,
        1 => high,
        _ => low + (random.NextDouble() * (high - low)),
    };

    private static MachineDesign RandomMachine(Random random)
    {
        string[] ends = ["A", "B", "C", "D"];
        var elements = Enumerable.Range(0, 3)
            .Select(index => string.Create(CultureInfo.InvariantCulture, $"    r{index}: {{kind: resistor, between: [{Two(random, [.. ends, "p"], index)}], value: {Math.Pow(10, 1 + (random.NextDouble() * 3)):0} ohm +-{random.Next(1, 20)} %}}"))
            .Concat(Enumerable.Range(0, 3).Select(index => string.Create(CultureInfo.InvariantCulture, $"    d{index}: {{kind: diode, between: [{Two(random, ends, index)}], forward: 0.{random.Next(1, 5)} V .. 0.{random.Next(5, 9)} V}}")))
            .Append("    r3: {kind: resistor, between: [p, B], value: 200 ohm +-5 %}")
            .Append("    r4: {kind: resistor, between: [A, p], value: 2 kohm +-5 %}")
            .Append("    i0: {kind: insulation, between: [A, C], at-least: 100 kohm}");
        var box = string.Join('\n', ["box:", "  name: Box", "  letter: N", $"  terminals: {{{string.Join(", ", ends.Select(end => $"{end}: {{role: passive}}"))}}}", "  connectors: {ROW: {terminals: [A, B, C, D], family: row, pluggable: false}}", "  circuit:", .. elements]);
        var wires = ends.Select((end, index) => $"W{index}: {{from: N1.{end}, to: N2.{ends[random.Next(4)]}, section: 0.5 mm2, colour: red, length: 1 m}}");
        return SmallMachine.Read("N1: {type: box, name: One}\nN2: {type: box, name: Two}\nP1: {type: lamp, name: Lamp}", string.Join('\n', wires.Append("W8: {from: N1.A, to: P1.+, section: 0.5 mm2, colour: red, length: 1 m}").Append("W9: {from: N2.D, to: P1.-, section: 0.5 mm2, colour: red, length: 1 m}")), box + "\n" + Lamp);
    }

    private static string Two(Random random, string[] nodes, int first) => $"{nodes[first]}, {nodes[(first + 1 + random.Next(nodes.Length - 1)) % nodes.Length]}";
}
