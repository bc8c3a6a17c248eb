using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A contact never closes: dirt, a bent lever, an actuator that does not reach.</summary>
internal sealed class ContactNeverCloses : IWiringFaultRule
{
    public string Kind => "contact-never-closes";

    public string Words => "contacts that never close";

    public double Prior => Priors.ContactNeverCloses;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Contact
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"Contact {element.Name} of {element.Subject} never closes.",
            [element.Subject],
            new Consequence(Severity.DoesNotWork, "What it switches stays off, or an end is never seen."),
            "Hand: operate it and measure across it.",
            new Cut(element.Index));
}
