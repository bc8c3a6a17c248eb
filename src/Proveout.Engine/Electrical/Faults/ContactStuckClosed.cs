using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A contact never opens: welded, or its block has come off the actuator.</summary>
internal sealed class ContactStuckClosed : IWiringFaultRule
{
    public string Kind => "contact-stuck-closed";

    public string Words => "contacts that never open";

    public double Prior => Priors.ContactStuckClosed;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Contact
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"Contact {element.Name} of {element.Subject} never opens: it is welded, or its block has come off.",
            [element.Subject],
            Consequence.Worse(new(Severity.DoesNotWork, "It cannot be switched off here."), context.OfJoining(element.A, element.B)),
            "Hand: operate it and measure across it.",
            new Join(element.A, element.B, element.LowOhms, element.HighOhms));
}
