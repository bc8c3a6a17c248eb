using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>What diode tests may show under faults, against every pattern of conduction solved densely.</summary>
public sealed class DiodeFaultTests
{
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
            RandomJunctionMachine.Lamp));
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
        var campaign = new WiringCampaign(RandomJunctionMachine.Of(random));
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
}
