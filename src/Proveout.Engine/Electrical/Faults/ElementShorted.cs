using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A heater, coil or sensor is shorted: crushed bead, leads that touch, a burnt winding.</summary>
internal sealed class ElementShorted : IWiringFaultRule
{
    private const double LowOhms = 0.005;
    private const double MostOhms = 20;

    public string Kind => "element-shorted";

    public string Words => "heaters, coils and sensors shorted";

    public double Prior => Priors.ElementShorted;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in OwnElements.Of(context)
        let mostOhms = Math.Min(MostOhms, element.LowOhms / 10)
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Name} of {element.Subject} is shorted.",
            [element.Subject],
            OfPart(context, element),
            "Unplug it and measure the part alone.",
            new Join(element.A, element.B, Math.Min(LowOhms, mostOhms), mostOhms));

    private static Consequence OfPart(WiringContext context, NetworkElement element) => context.Design.FindPart(element.Subject)!.Type.ClassLetter switch
    {
        "B" => new(Severity.DoesNotWork, "The temperature reads far too hot, and heating stops."),
        "E" => new(Severity.Fire, OwnElements.IsMains(context, element) ? "A short circuit across the mains." : "The supply is shorted as soon as it heats."),
        _ => new(Severity.Damage, "The output that feeds it is overloaded."),
    };
}
