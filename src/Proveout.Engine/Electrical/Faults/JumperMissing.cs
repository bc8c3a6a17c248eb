using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A jumper that should be fitted is not.</summary>
internal sealed class JumperMissing : IWiringFaultRule
{
    public string Kind => "jumper-missing";

    public string Words => "jumpers missing";

    public double Prior => Priors.JumperMissing;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Kind == ElementKind.Jumper
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"Jumper {element.Name} of {element.Subject} is not fitted.",
            [element.Subject],
            new Consequence(Severity.DoesNotWork, "What it selects gets no supply."),
            "Eye: jumper map with a photograph.",
            new Cut(element.Index));
}
