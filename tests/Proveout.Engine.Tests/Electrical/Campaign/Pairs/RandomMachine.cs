using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Small machines of random boxes and random conductors.</summary>
internal static class RandomMachine
{
    private const int Boxes = 3;
    private const int Terminals = 5;
    private const int Conductors = 7;

    private static readonly string[] Roles = ["passive", "positive", "zero-volt", "signal", "passive"];

    /// <summary>The machine of a seed.</summary>
    public static MachineDesign Of(int seed)
    {
        var random = new Random(seed);
        var boxes = Enumerable.Range(1, Boxes).ToArray();
        return SmallMachine.Read(
            parts: string.Join('\n', boxes.Select(box => $"A{box}: {{type: box-{box}, name: Box {box}}}")),
            types: string.Join('\n', boxes.Select(box => Box(box, random))),
            conductors: string.Join('\n', Enumerable.Range(1, Conductors).Select(number => Conductor(number, random))));
    }

    private static string Conductor(int number, Random random)
    {
        var from = random.Next(Boxes);
        var to = (from + 1 + random.Next(Boxes - 1)) % Boxes;
        return $"W{number}: {{from: A{from + 1}.T{random.Next(Terminals)}, to: A{to + 1}.T{random.Next(Terminals)}, section: 0.75 mm2, colour: red, length: {random.Next(1, 9)}00 mm}}";
    }

    // Between any two terminals a resistor, a junction or insulation; the first two terminals are on a plug.
    private static string Box(int number, Random random) =>
        $"""
        box-{number}:
          name: Box {number}
          letter: A
          terminals: {string.Concat("{", string.Join(", ", Enumerable.Range(0, Terminals).Select(terminal => $"T{terminal}: {{role: {Roles[terminal]}}}")), "}")}
          connectors:
            PLUG: {string.Concat("{", "terminals: [T0, T1], family: plug-3.5, pluggable: true", "}")}
          circuit:
        {string.Join('\n', Enumerable.Range(0, 4).Select(index => Element(index, random)))}
        """;

    private static string Element(int index, Random random)
    {
        var a = random.Next(Terminals);
        var b = (a + 1 + random.Next(Terminals - 1)) % Terminals;
        var what = random.Next(6) switch
        {
            0 => "kind: diode, forward: 0.3 V .. 0.8 V",
            1 => "kind: insulation, at-least: 1 Mohm",
            _ => string.Create(CultureInfo.InvariantCulture, $"kind: resistor, value: {Math.Pow(10, 4 * random.NextDouble()):0.0} ohm +-5 %"),
        };
        return $"    e{index}: {{{what}, between: [T{a}, T{b}]}}";
    }
}
