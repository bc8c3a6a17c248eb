using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Review;

/// <summary>Two small machines without a flaw, and what the review says of them once a line is changed.</summary>
internal static class ReviewMachines
{
    private const string OvenParts =
        """
        X1: {type: mains-inlet-switched, name: Inlet}
        F1: {type: circuit-breaker-6, name: Breaker}
        Q1: {type: solid-state-relay-25, name: Relay}
        F2: {type: thermal-cut-off, name: Cut-off}
        E1: {type: mains-silicone-heater, name: Plate}
        X4: {type: earth-bar-6, name: Earth bar}
        T1: {type: supply-24-150, name: Supply}
        X9: {type: zero-volt-bar-10, name: Zero bar}
        """;

    private const string OvenConductors =
        """
        W1: {from: X1.L-OUT, to: F1.1, section: 1.0 mm2, colour: brown, length: 300 mm}
        W2: {from: F1.2, to: Q1.1, section: 1.0 mm2, colour: brown, length: 300 mm, route: [duct]}
        W3: {from: Q1.2, to: F2.1, section: 1.0 mm2, colour: black, length: 300 mm}
        W4: {from: F2.2, to: E1.L, section: 1.0 mm2, colour: brown, length: 300 mm}
        W5: {from: X1.N-OUT, to: E1.N, section: 1.0 mm2, colour: blue, length: 300 mm}
        W6: {from: X1.PE, to: X4.1, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        W7: {from: X4.2, to: E1.PE, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        W8: {from: X4.3, to: T1.PE, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        W9: {from: T1.V-1, to: X9.1, section: 1.5 mm2, colour: black, length: 300 mm, route: [other]}
        W10: {from: X9.2, to: X4.4, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        """;

    private const string HeadParts =
        """
        T1: {type: external-supply-24, name: Supply}
        A1: {type: tool-head-board, name: Board, jumpers: {FAN-SUPPLY: 24 V}}
        E1: {type: cartridge-heater-24-60, name: Heater}
        G1: {type: fan-24-40, name: Fan}
        """;

    private const string HeadConductors =
        """
        W1: {from: T1.V+, to: A1.24V, section: 0.75 mm2, colour: red, length: 300 mm}
        W2: {from: T1.V-, to: A1.0V, section: 0.75 mm2, colour: black, length: 300 mm}
        W3: {from: A1.HEAT+, to: E1.1, section: 0.75 mm2, colour: red, length: 200 mm}
        W4: {from: A1.HEAT-, to: E1.2, section: 0.75 mm2, colour: white, length: 200 mm}
        W5: {from: A1.FA+, to: G1.+, section: 0.22 mm2, colour: red, length: 200 mm}
        W6: {from: A1.FA-, to: G1.-, section: 0.22 mm2, colour: black, length: 200 mm}
        """;

    /// <summary>Sentences of one rule on the mains-heated oven, after changes of text.</summary>
    public static string[] Oven(string rule, params (string Old, string New)[] changes) => Sentences(
        rule,
        SmallMachine.Read(
            Change(OvenParts, changes),
            Change(OvenConductors, changes),
            routes: "duct: {kind: duct}\nother: {kind: duct}",
            mains: SmallMachine.Mains));

    /// <summary>Sentences of one rule on the 24 V tool head, after changes of text.</summary>
    public static string[] Head(string rule, params (string Old, string New)[] changes) =>
        Sentences(rule, SmallMachine.Read(Change(HeadParts, changes), Change(HeadConductors, changes)));

    /// <summary>Everything that the review says of both machines unchanged.</summary>
    public static IEnumerable<Finding> Unchanged =>
    [
        .. DesignReview.Of(SmallMachine.Read(OvenParts, OvenConductors, routes: "duct: {kind: duct}\nother: {kind: duct}", mains: SmallMachine.Mains)),
        .. DesignReview.Of(SmallMachine.Read(HeadParts, HeadConductors)),
    ];

    private static string[] Sentences(string rule, MachineDesign design) =>
        [.. DesignReview.Of(design).Where(finding => finding.Rule == rule).Select(finding => finding.Sentence)];

    // Lines that do not hold the old text are left as they are; an old text that stands nowhere is a slip of the test.
    private static string Change(string text, (string Old, string New)[] changes)
    {
        foreach (var (old, replacement) in changes)
            text = text.Replace(old, replacement, StringComparison.Ordinal);
        return string.Join('\n', text.Split('\n').Where(line => line.Trim().Length > 0));
    }
}
