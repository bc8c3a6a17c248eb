using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A heater, coil or sensor of another rating than the design says.</summary>
internal sealed class WrongValue : IWiringFaultRule
{
    // The ratios that mixed-up parts give: half and double the voltage, 120 V against 230 V. Common practice; P = U²/R.
    private static readonly (double Ratio, string Words)[] Ratios =
    [
        (0.25, "a quarter of the resistance: made for half the voltage"),
        (0.27, "0.27 of the resistance: made for 120 V instead of 230 V"),
        (3.7, "3.7 times the resistance: made for 230 V instead of 120 V"),
        (4, "four times the resistance: made for double the voltage"),
    ];

    private const int MostTerminals = 8;

    public string Kind => "wrong-value";

    public string Words => "parts of another value";

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Resistor && !element.IsMetal && element.HighOhms < 2 * element.LowOhms && IsPartOfItsOwn(context, element)
        let isMains = IsMains(context, element)
        from ratio in Ratios
        where isMains == ratio.Ratio is 0.27 or 3.7
        select OfRatio(context, element, ratio.Ratio, ratio.Words);

    // A resistor inside a board is not chosen by the builder.
    private static bool IsPartOfItsOwn(WiringContext context, NetworkElement element) =>
        context.Design.FindPart(element.Subject)!.Type.Terminals.Count <= MostTerminals
        && context.Wiring.Nodes[element.A].Kind == NodeKind.Terminal
        && context.Wiring.Nodes[element.B].Kind == NodeKind.Terminal;

    private static bool IsMains(WiringContext context, NetworkElement element) =>
        context.ClassOf(element.A) is NetClass.Line or NetClass.Neutral || context.ClassOf(element.B) is NetClass.Line or NetClass.Neutral;

    private WiringFault OfRatio(WiringContext context, NetworkElement element, double ratio, string words) => WiringContext.Fault(
        this,
        FormattableString.Invariant($"{element.Subject}.{element.Name}:{ratio}"),
        $"{element.Subject} has {words}.",
        [element.Subject],
        OfPart(context, element, ratio),
        Priors.WrongValue,
        "Eye: the rating printed on the part.",
        new Replace(element.Index, element.LowOhms * ratio, element.HighOhms * ratio));

    private static Consequence OfPart(WiringContext context, NetworkElement element, double ratio) =>
        ratio < 1 && context.Design.FindPart(element.Subject)!.Type.Terminals.All(terminal => terminal.Role is not TerminalRole.Winding and not TerminalRole.Data)
            ? new(Severity.Fire, "It takes about four times the power it should.")
            : new(Severity.DoesNotWork, "It does not do what it should: too weak, too slow or mismatched.");
}
