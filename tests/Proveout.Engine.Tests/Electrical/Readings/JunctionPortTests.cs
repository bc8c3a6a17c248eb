using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Electrical.Readings;

/// <summary>The piecewise-linear solution against a general-purpose circuit simulator: ngspice 39, run at development time on Circuits/*.cir.</summary>
public sealed class JunctionPortTests
{
    private const double SimulatorVolts = 2e-5;

    [Theory]
    [InlineData(0.5e-3, 0.3, 0.4, 2e3, 1e3, 0.3000003)]
    [InlineData(1.5e-3, 0.7, 0.7, 50e3, 5e3, 0.7000015)]
    public void A_reversed_board_supply_stands_at_its_clamp(double amperes, double clamp, double railClamp, double load, double railLoad, double volts)
    {
        // Circuits/clamp-with-rails.cir: 0 = 24 V input (black), 1 = 0 V (red), 2 = 5 V rail.
        var port = new JunctionPort(Network(3, (1, 0, load), (1, 2, railLoad)), [(1, 0, clamp), (1, 2, clamp), (2, 0, railClamp)], 1, 0);
        Assert.Equal(volts, port.Drive(amperes)!.Value.Volts, SimulatorVolts);
    }

    [Theory]
    [InlineData(0.5e-3, 0.4, 190, 0.8950008)]
    [InlineData(1.5e-3, 0.7, 210, 1.715003)]
    public void A_bridge_rectifier_with_a_load_drops_two_junctions_and_the_load(double amperes, double forward, double load, double volts)
    {
        // Circuits/bridge-with-load.cir: 0 and 1 the alternating side, 2 plus, 3 minus.
        var junctions = new[] { (1, 2, forward), (0, 2, forward), (3, 1, forward), (3, 0, forward) };
        var network = Network(4, (2, 3, load));
        Assert.Equal(volts, new JunctionPort(network, junctions, 1, 0).Drive(amperes)!.Value.Volts, SimulatorVolts);
        Assert.Equal(volts, new JunctionPort(network, junctions, 0, 1).Drive(amperes)!.Value.Volts, SimulatorVolts);
    }

    [Theory]
    [InlineData(0.5e-3, 0.15, 0.95, 0.2954548)]
    [InlineData(1.5e-3, 0.35, 1.05, 0.8590917)]
    public void A_junction_across_a_Wheatstone_bridge_conducts_and_lowers_the_reading(double amperes, double forward, double tolerance, double volts)
    {
        // Circuits/wheatstone-with-junction.cir: 0 bottom, 1 top, 2 and 3 the arms.
        var network = Network(4, (1, 2, 200 * tolerance), (2, 0, 2000 * tolerance), (1, 3, 2000 * tolerance), (3, 0, 200 * tolerance));
        Assert.Equal(volts, new JunctionPort(network, [(2, 3, forward)], 1, 0).Drive(amperes)!.Value.Volts, SimulatorVolts);
    }

    [Theory]
    [InlineData(0.5e-3, 0.7, 95, 20e3, 1.440658)]
    [InlineData(1.5e-3, 0.9, 105, 40e3, 1.952378)]
    public void Two_lamps_in_series_add(double amperes, double forward, double series, double leak, double volts)
    {
        // Circuits/two-lamps-with-resistor.cir.
        var port = new JunctionPort(Network(4, (1, 2, series), (1, 0, leak)), [(2, 3, forward), (3, 0, forward)], 1, 0);
        Assert.Equal(volts, port.Drive(amperes)!.Value.Volts, SimulatorVolts);
    }

    [Fact]
    public void Currents_and_voltages_of_random_circuits_complement_each_other()
    {
        var random = new Random(20261125);
        for (var trial = 0; trial < 200; trial++)
        {
            var edges = Enumerable.Range(1, 7).Select(node => (random.Next(node), node, Ohms(random)))
                .Concat(Enumerable.Range(0, 5).Select(_ => (random.Next(4), 4 + random.Next(4), Ohms(random))))
                .ToArray();
            var junctions = Enumerable.Range(0, 8).Select(_ => (random.Next(4), 4 + random.Next(4), 0.2 + random.NextDouble()))
                .Select(item => random.Next(2) == 0 ? item : (item.Item2, item.Item1, item.Item3))
                .ToArray();
            var port = new JunctionPort(Network(8, edges), junctions, 0, 7);
            var at = new[] { 0.2e-3, 0.5e-3, 1e-3, 2e-3 }.Select(amperes => port.Drive(amperes)!.Value).ToArray();

            // Volts rise with current, stay at or below those with junctions open, and the content is their integral: convex between chords.
            Assert.All(at.Zip(at.Skip(1)), pair => Assert.True(pair.First.Volts <= pair.Second.Volts + 1e-9));
            Assert.True(at[2].Volts <= (port.OpenOhms * 1e-3) + 1e-9);
            var chord = (at[2].Content - at[1].Content) / 0.5e-3;
            Assert.InRange(chord, at[1].Volts - 1e-6, at[2].Volts + 1e-6);
        }
    }

    private static double Ohms(Random random) => Math.Pow(10, (random.NextDouble() * 6) - 1);

    private static ResistorNetwork Network(int nodes, params (int A, int B, double Ohms)[] edges) =>
        new(nodes, [.. edges.Where(edge => edge.A != edge.B).Select(edge => new Edge(edge.A, edge.B, 1 / edge.Ohms))]);
}
