using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A heater, coil, sensor or terminator is open inside, or missing.</summary>
internal sealed class ElementOpen : IWiringFaultRule
{
    public string Kind => "element-open";

    public string Words => "heaters, coils and sensors open or missing";

    public double Prior => Priors.ElementOpen;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in OwnElements.Of(context)
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Name} of {element.Subject} is open or missing.",
            [element.Subject],
            OfPart(context.Design.FindPart(element.Subject)!),
            "Unplug it and measure the part alone; wiggle its leads.",
            new Cut(element.Index));

    private static Consequence OfPart(Part part) => part.Type.ClassLetter == "B"
        ? new(Severity.Fire, "The temperature reads very cold, or a believable room temperature where the table ends: full heat follows where nothing stops it.")
        : new(Severity.DoesNotWork, "It does nothing.");
}
