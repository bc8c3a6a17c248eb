using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A heater, coil or sensor of another rating than the design says.</summary>
internal sealed class WrongValue : IWiringFaultRule
{
    // The ratios that mixed-up parts give: half and double the voltage, 120 V against 230 V, other wattages. Common practice; P = U²/R.
    private static readonly (double Ratio, Use Use, string Words)[] Ratios =
    [
        (0.25, Use.ExtraLow, "a quarter of the resistance: made for half the voltage"),
        (0.27, Use.Mains, "0.27 of the resistance: made for 120 V instead of 230 V"),
        (0.5, Use.Heater, "half the resistance: made for double the power"),
        (0.8, Use.Heater, "0.8 of the resistance: made for a quarter more power"),
        (1.25, Use.Heater, "1.25 times the resistance: made for a fifth less power"),
        (2, Use.Heater, "double the resistance: made for half the power"),
        (3.7, Use.Mains, "3.7 times the resistance: made for 230 V instead of 120 V"),
        (4, Use.ExtraLow, "four times the resistance: made for double the voltage"),
    ];

    private enum Use
    {
        Mains,
        ExtraLow,
        Heater,
    }

    public string Kind => "wrong-value";

    public string Words => "parts of another value";

    public double Prior => Priors.WrongValue;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in OwnElements.Of(context)
        where element.HighOhms < 2 * element.LowOhms
        from ratio in Ratios
        where Fits(context, element, ratio.Use)
        select OfRatio(context, element, ratio.Ratio, ratio.Words);

    private static bool Fits(WiringContext context, NetworkElement element, Use use) => use switch
    {
        Use.Mains => OwnElements.IsMains(context, element),
        Use.ExtraLow => !OwnElements.IsMains(context, element),
        _ => OwnElements.IsHeater(context, element),
    };

    private WiringFault OfRatio(WiringContext context, NetworkElement element, double ratio, string words) => WiringContext.Fault(
        this,
        FormattableString.Invariant($"{element.Subject}.{element.Name}:{ratio}"),
        $"{element.Subject} has {words}.",
        [element.Subject],
        OfPart(context, element, ratio),
        "Eye: the rating printed on the part.",
        new Replace(element.Index, element.LowOhms * ratio, element.HighOhms * ratio));

    private static Consequence OfPart(WiringContext context, NetworkElement element, double ratio) =>
        ratio < 1 && context.Design.FindPart(element.Subject)!.Type.Terminals.All(terminal => terminal.Role is not TerminalRole.Winding and not TerminalRole.Data)
            ? new(Severity.Fire, FormattableString.Invariant($"It takes about {1 / ratio:0.##} times the power it should."))
            : new(Severity.DoesNotWork, "It does not do what it should: too weak, too slow or mismatched.");
}
