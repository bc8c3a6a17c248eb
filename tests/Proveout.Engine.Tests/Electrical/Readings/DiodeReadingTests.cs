using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Readings;

public sealed class DiodeReadingTests
{
    private static readonly DiodeTestMode Mode = DiodeTestMode.HandHeld;

    [Fact]
    public void No_circuit_inside_its_tolerances_reads_outside_the_limits()
    {
        var random = new Random(20261126);
        for (var trial = 0; trial < 60; trial++)
        {
            var wiring = RandomWiring(random);
            var state = new StateNetwork(wiring, new MachineState(false, []));
            var (red, black) = (wiring.PartNode("N1", "A"), wiring.PartNode("N1", "B"));
            var (low, high) = new DiodeReading(wiring, state).Volts(red, black, Mode)!.Value;
            for (var point = 0; point < 20; point++)
            {
                var volts = InsideTolerances(wiring, random, red, black);
                Assert.True(volts >= Math.Min(low, Mode.MostOpenVolts) - 1e-3, $"{volts} V lies below {low} V.");
                Assert.True(volts <= high + 1e-3, $"{volts} V lies above {high} V.");
            }
        }
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("quarrymoor")]
    public void Every_port_of_a_board_in_a_whole_machine_has_limits_in_order(string sample)
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design(sample));
        var reading = new DiodeReading(wiring, new StateNetwork(wiring, new MachineState(false, [])));
        var board = wiring.Nodes.Where(node => node is { Kind: NodeKind.Terminal, Subject: "A1" }).Take(5).ToArray();
        Assert.All(board.Zip(board.Skip(1)), pair =>
        {
            var (low, high) = reading.Volts(pair.First.Index, pair.Second.Index, Mode)!.Value;
            Assert.True(low <= high + 1e-9, $"{pair.First} to {pair.Second}: {low} V to {high} V.");
        });
    }

    private static double InsideTolerances(WiringNetwork wiring, Random random, int red, int black)
    {
        var edges = wiring.Elements
            .Where(element => double.IsFinite(LeastOhms.Of(element)))
            .Select(element => new Edge(element.A, element.B, 1 / Between(random, LeastOhms.Of(element), Math.Min(element.HighOhms, 1e9))))
            .ToArray();
        var junctions = wiring.Elements
            .Where(element => element.Part is Diode)
            .Select(element => (element.A, element.B, Between(random, ((Diode)element.Part!).ForwardLow.Volts, ((Diode)element.Part!).ForwardHigh.Volts)))
            .ToArray();
        return new JunctionPort(new ResistorNetwork(wiring.Nodes.Count, edges), junctions, red, black)
            .Drive(Between(random, Mode.LeastAmperes, Mode.MostAmperes))!.Value.Volts;
    }

    // Half of the values lie at a limit, where extremes are.
    private static double Between(Random random, double low, double high) => random.Next(4) switch
    {
        0 => low,
        1 => high,
        _ => low + (random.NextDouble() * (high - low)),
    };

    private static WiringNetwork RandomWiring(Random random)
    {
        string[] nodes = ["A", "B", "p", "q", "r", "s"];
        var resistors = Enumerable.Range(0, 7).Select(index => string.Create(
            CultureInfo.InvariantCulture,
            $"    r{index}: {{kind: resistor, between: [{nodes[index % 6]}, {Other(random, nodes, index % 6)}], value: {Math.Pow(10, 1 + (random.NextDouble() * 4)):0} ohm +-{random.Next(1, 30)} %}}"));
        var junctions = Enumerable.Range(0, 5).Select(index => string.Create(
            CultureInfo.InvariantCulture,
            $"    d{index}: {{kind: diode, between: [{nodes[index]}, {Other(random, nodes, index)}], forward: 0.{random.Next(1, 5)} V .. 0.{random.Next(5, 9)} V}}"));
        const string Insulation = "    i0: {kind: insulation, between: [A, r], at-least: 20 kohm}";
        var type = string.Join(
            Environment.NewLine,
            ["one:", "  name: One", "  letter: N", "  terminals:", .. nodes.Select(node => $"    {node}: {{role: passive}}"), "  circuit:", .. resistors, .. junctions, Insulation]);
        return WiringNetworkBuilder.Build(SmallMachine.Read("N1: {type: one, name: One}", types: type));
    }

    private static string Other(Random random, string[] nodes, int not) => nodes[(not + 1 + random.Next(nodes.Length - 1)) % nodes.Length];
}
