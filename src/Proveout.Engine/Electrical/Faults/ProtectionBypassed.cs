using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A fuse or thermal cut-off is bridged, so that it cannot open the circuit.</summary>
internal sealed class ProtectionBypassed : IWiringFaultRule
{
    private const double LowOhms = 0.0002;
    private const double HighOhms = 0.02;

    public string Kind => "protection-bypassed";

    public string Words => "fuses and cut-offs bridged";

    public double Prior => Priors.ProtectionBypassed;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Fuse
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Name} of {element.Subject} is bridged: it cannot open the circuit.",
            [element.Subject],
            new Consequence(Severity.Fire, "Nothing ends an over-current or an over-temperature here."),
            "Eye: no wire, foil or second path beside it; the way is open with the fuse taken out.",
            new Join(element.A, element.B, LowOhms, HighOhms));
}
