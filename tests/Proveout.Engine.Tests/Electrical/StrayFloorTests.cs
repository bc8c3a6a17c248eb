using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>No meter within the stated current and voltage reads less than the lower limit, whatever junctions and insulation do.</summary>
public sealed class StrayFloorTests
{
    private const int Terminals = 5;
    private const double MeterVolts = 3.3;
    private const double LeakSiemens = 1e-13;

    private static readonly double[] TestAmperes = [1e-3, 3e-4, 1e-4, 1e-5, 1e-6];

    [Fact]
    public void Random_circuits_with_junctions_never_read_below_the_lower_limit()
    {
        var random = new Random(20261125);
        var conducting = 0;
        for (var round = 0; round < 150; round++)
            conducting += TryCircuit(random);
        Assert.True(conducting > 100, $"Only {conducting} readings had a junction conducting: the trial says nothing.");
    }

    private static int TryCircuit(Random random)
    {
        var resistors = Enumerable.Range(0, random.Next(2, 6)).Select(_ => Pair(random, Math.Pow(10, 1 + (4 * random.NextDouble())))).ToArray();
        var junctions = Enumerable.Range(0, random.Next(1, 4)).Select(_ => Pair(random, 0.3 + random.NextDouble())).ToArray();
        var insulation = Enumerable.Range(0, random.Next(0, 3)).Select(_ => Pair(random, 1e6)).ToArray();
        var wiring = WiringNetworkBuilder.Build(SmallMachine.Read(parts: "A1: {type: box, name: Box}", types: Type(resistors, junctions, insulation)));
        var state = new StateNetwork(wiring, new MachineState(false, []));
        var bounds = new JunctionBounds(state);
        var conducting = 0;
        foreach (var amperes in TestAmperes)
            for (var red = 0; red < Terminals; red++)
                for (var black = 0; black < Terminals; black++)
                {
                    if (red == black || Volts([.. resistors, .. insulation], junctions, red, black, amperes) is not { } solved || solved.Port > MeterVolts)
                        continue;
                    conducting += solved.Conducts ? 1 : 0;
                    var (a, b) = (wiring.PartNode("A1", $"T{red}"), wiring.PartNode("A1", $"T{black}"));
                    Assert.True(solved.Port / amperes >= state.Resistance(a, b).LowOhms * 0.9999, $"{solved.Port / amperes} ohm is below {state.Resistance(a, b).LowOhms}");
                    Assert.True(solved.Port / amperes >= bounds.Resistance(a, b).LowOhms * 0.9999, $"{solved.Port / amperes} ohm is below {bounds.Resistance(a, b).LowOhms}");
                }

        return conducting;
    }

    // Ideal junctions by trial: the one pattern of conducting and blocking in which every current runs forward and no blocked one is overdriven.
    private static (double Port, bool Conducts)? Volts(
        (int A, int B, double Value)[] resistors,
        (int A, int B, double Value)[] junctions,
        int red,
        int black,
        double amperes)
    {
        for (var pattern = 0; pattern < 1 << junctions.Length; pattern++)
        {
            var on = Enumerable.Range(0, junctions.Length).Where(index => (pattern >> index & 1) == 1).ToArray();
            var matrix = Matrix<double>.Build.DenseDiagonal(Terminals + on.Length, Terminals + on.Length, row => row < Terminals ? LeakSiemens : 0);
            var right = Vector<double>.Build.Dense(Terminals + on.Length);
            (right[red], right[black]) = (amperes, -amperes);
            foreach (var (a, b, ohms) in resistors)
            {
                matrix[a, a] += 1 / ohms;
                matrix[b, b] += 1 / ohms;
                matrix[a, b] -= 1 / ohms;
                matrix[b, a] -= 1 / ohms;
            }

            for (var index = 0; index < on.Length; index++)
            {
                var (anode, cathode, volts) = junctions[on[index]];
                matrix[anode, Terminals + index] = matrix[Terminals + index, anode] = 1;
                matrix[cathode, Terminals + index] = matrix[Terminals + index, cathode] = -1;
                right[Terminals + index] = volts;
            }

            var solution = matrix.LU().Solve(right);
            var fits = Enumerable.Range(0, on.Length).All(index => solution[Terminals + index] >= -1e-15)
                && junctions.Index().All(item => on.Contains(item.Index) || solution[item.Item.A] - solution[item.Item.B] <= item.Item.Value + 1e-9);
            if (fits && solution.ForAll(double.IsFinite))
                return (solution[red] - solution[black], Enumerable.Range(0, on.Length).Any(index => solution[Terminals + index] > amperes / 100));
        }

        return null;
    }

    private static string Type((int A, int B, double Value)[] resistors, (int A, int B, double Value)[] junctions, (int A, int B, double Value)[] insulation) =>
        $"""
        box:
          name: Box
          letter: A
          terminals: {string.Concat("{", string.Join(", ", Enumerable.Range(0, Terminals).Select(terminal => $"T{terminal}: {{role: passive}}")), "}")}
          circuit:
        {Lines("resistor", resistors, ohms => $"value: {Plain(ohms)} ohm +-1 %")}
        {Lines("diode", junctions, volts => $"forward: {Plain(volts)} V .. 3.5 V")}
        {Lines("insulation", insulation, ohms => $"at-least: {Plain(ohms)} ohm")}
        """;

    private static string Lines(string kind, (int A, int B, double Value)[] elements, Func<double, string> value) => string.Join(
        '\n',
        elements.Select((element, index) => $"    {kind}-{index}: {{kind: {kind}, between: [T{element.A}, T{element.B}], {value(element.Value)}}}"));

    private static string Plain(double value) => value.ToString("0.000000", CultureInfo.InvariantCulture);

    private static (int A, int B, double Value) Pair(Random random, double value)
    {
        var a = random.Next(Terminals);
        return (a, (a + 1 + random.Next(Terminals - 1)) % Terminals, value);
    }
}
