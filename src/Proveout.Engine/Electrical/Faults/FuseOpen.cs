using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A fuse, circuit-breaker or thermal cut-off is missing, operated or without contact.</summary>
internal sealed class FuseOpen : IWiringFaultRule
{
    public string Kind => "fuse-open";

    public string Words => "fuses and cut-offs missing or operated";

    public double Prior => Priors.FuseOpen;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Fuse
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Name} of {element.Subject} is missing, has operated or makes no contact.",
            [element.Subject],
            new Consequence(Severity.DoesNotWork, "What it feeds stays dead."),
            "Eye: the fuse in its holder.",
            new Cut(element.Index));
}
