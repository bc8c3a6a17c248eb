using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Two boxes of random resistors and junctions, a lamp with moulded leads beside them, and random conductors.</summary>
internal static class RandomJunctionMachine
{
    /// <summary>The types of the lamp and of a socket for it.</summary>
    public const string Lamp =
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

    /// <summary>A machine of what comes next at random.</summary>
    public static MachineDesign Of(Random random)
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
