using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Network;

/// <summary>The least volts along ways that pass a junction, against relaxing every junction and insulation until nothing changes (Bellman, Quarterly of Applied Mathematics 16 (1958) 87-90).</summary>
public sealed class JunctionWaysTests
{
    private const int Terminals = 30;

    [Fact]
    public void A_way_from_terminal_to_terminal_of_random_parts_takes_as_many_volts_as_relaxing_all_says()
    {
        var random = new Random(20261129);
        var (found, none) = (0, 0);
        for (var round = 0; round < 40; round++)
        {
            var state = new StateNetwork(WiringNetworkBuilder.Build(RandomPart(random)), new MachineState(false, []));
            var ways = new JunctionWays(state.StrayEnds);
            for (var from = 0; from < state.Low.Network.Islands.Count; from++)
            {
                var least = Relaxed(state, from);
                for (var to = 0; to < state.Low.Network.Islands.Count; to++)
                {
                    if (to == from)
                        continue;
                    var expected = least[to] < ElementBand.OpenCircuitVolts ? least[to] : double.PositiveInfinity;
                    Assert.Equal(expected, ways.LeastVolts(null, from, to), 1e-12);
                    (found, none) = double.IsFinite(expected) ? (found + 1, none) : (found, none + 1);
                }
            }
        }

        Assert.True(found > 2000 && none > 2000, $"{found} ways and {none} pairs without one were compared.");
    }

    // Junctions and insulation from anywhere to anywhere; resistors join some terminals to islands of several.
    private static MachineDesign RandomPart(Random random) => SmallMachine.Read(
        parts: "A1: {type: block, name: Block}",
        types: $$"""
            block:
              name: Block
              letter: A
              terminals: {{{string.Join(", ", Enumerable.Range(1, Terminals).Select(number => $"T{number}: {{role: passive}}"))}}}
              circuit:
            {{string.Join('\n', Enumerable.Range(1, 22).Select(number => $"    d{number}: {{kind: diode, between: [{Pair(random)}], forward: 0.{random.Next(2, 9)} V .. 1 V}}"))}}
            {{string.Join('\n', Enumerable.Range(1, random.Next(14)).Select(number => $"    i{number}: {{kind: insulation, between: [{Pair(random)}], at-least: 1 Mohm}}"))}}
            {{string.Join('\n', Enumerable.Range(1, 8).Select(number => $"    r{number}: {{kind: resistor, between: [{Pair(random)}], value: 10 ohm +-1 %}}"))}}
            """);

    private static string Pair(Random random)
    {
        var one = random.Next(1, Terminals + 1);
        return $"T{one}, T{((one + random.Next(Terminals - 1)) % Terminals) + 1}";
    }

    private static double[] Relaxed(StateNetwork state, int from)
    {
        var count = state.Low.Network.Islands.Count;
        var (before, past) = (new double[count], new double[count]);
        Array.Fill(before, double.PositiveInfinity);
        Array.Fill(past, double.PositiveInfinity);
        before[from] = 0;
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (a, b, _) in state.StrayPaths.Insulation)
                foreach (var least in new[] { before, past })
                {
                    changed |= Lower(least, state.PieceOf(b), least[state.PieceOf(a)]);
                    changed |= Lower(least, state.PieceOf(a), least[state.PieceOf(b)]);
                }

            foreach (var (anode, cathode, volts) in state.StrayPaths.Junctions)
                if (state.PieceOf(anode) != state.PieceOf(cathode))
                    changed |= Lower(past, state.PieceOf(cathode), Math.Min(before[state.PieceOf(anode)], past[state.PieceOf(anode)]) + volts);
        }

        return past;
    }

    private static bool Lower(double[] least, int island, double volts)
    {
        if (volts >= least[island] - 1e-12)
            return false;
        least[island] = volts;
        return true;
    }
}
