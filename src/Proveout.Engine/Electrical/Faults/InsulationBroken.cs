using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Insulation between two circuits of a part, or from a circuit to its case, is broken through.</summary>
/// <remarks>Bodies of heaters, motors and sensors are <see cref="BodyContact"/>; the load side of a solid-state relay is <see cref="SwitchShorted"/>.</remarks>
internal sealed class InsulationBroken : IWiringFaultRule
{
    private const double LowOhms = 0.001;
    private const double HighOhms = 100;

    public string Kind => "insulation-broken";

    public string Words => "insulation inside parts broken through";

    public double Prior => Priors.InsulationBroken;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Insulation
        let part = context.Design.FindPart(element.Subject)!
        where !(part.Type.ClassLetter is "B" or "E" or "M" && MetalPlaces.BodiesOf(part).Any(body => body == element.Part!.A || body == element.Part!.B))
        where !(part.Type.ClassLetter == "Q" && part.Type.ConnectorOf(element.Part!.A) is { } side && side == part.Type.ConnectorOf(element.Part!.B))
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"The insulation {element.Name} inside {element.Subject} is broken through.",
            [element.Subject],
            context.OfJoining(element.A, element.B),
            $"CAUTION: {InsulationMode.Danger} Insulation test: above 1 MΩ.",
            new Join(element.A, element.B, LowOhms, HighOhms));
}
