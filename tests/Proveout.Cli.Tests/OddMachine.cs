using System.Globalization;

namespace Proveout.Cli.Tests;

/// <summary>Machines that nobody would build.</summary>
internal static class OddMachine
{
    private const int TerminalsAPart = 100;
    private const string Second = "W2: {from: X1.b, to: X2.b, section: 0.5 mm2, colour: black, length: 300 mm}";

    /// <summary>Two parts with a circuit of one line inside, the eighth, and a third that nothing leads to.</summary>
    public static string Text(string circuit, bool isJoined = false) => $$$"""
        format: proveout-machine 1
        machine: {name: Odd}
        types:
          odd:
            name: Odd
            letter: X
            terminals: {a: {role: positive, voltage: 24 V, current: 2 A}, b: {role: zero-volt, voltage: 24 V, current: 2 A}}
            circuit: {{{{circuit}}}}
        parts:
          X1: {type: odd, name: One}
          X2: {type: odd, name: Other}
          X3: {type: odd, name: Alone}
        conductors:
          W1: {from: X1.a, to: X2.a, section: 0.5 mm2, colour: red, length: 300 mm}
          {{{(isJoined ? Second : "")}}}
        """;

    /// <summary>A machine of so many terminals.</summary>
    public static string OfTerminals(int count)
    {
        var terminals = string.Join(", ", Numbers(TerminalsAPart).Select(number => $"t{number}: {{role: passive, voltage: 24 V}}"));
        var parts = string.Join("\n", Numbers(count / TerminalsAPart).Select(number => $"  X{number}: {{type: block, name: Block}}"));
        return $$$"""
            format: proveout-machine 1
            machine: {name: Vast}
            types:
              block:
                name: Block
                letter: X
                terminals: {{{{terminals}}}}
            parts:
            {{{parts}}}
            """;
    }

    private static IEnumerable<string> Numbers(int count) => Enumerable.Range(1, count).Select(number => number.ToString(CultureInfo.InvariantCulture));
}
