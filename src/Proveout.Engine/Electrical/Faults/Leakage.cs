using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Damp, flux or dirt lets some current past an insulation: a damp mains heater, a dirty sensor plug.</summary>
internal sealed class Leakage : IWiringFaultRule
{
    // Above half a megohm only an insulation tester is sure; IEC 60204-1 clause 18.3 asks 1 Mohm at 500 V.
    private const double LowOhms = 10e3;
    private const double HighOhms = 500e3;
    private const double LeastSensorOhms = 1e3;

    public string Kind => "leakage";

    public string Words => "leakage through damp or dirt";

    public double Prior => Priors.Leakage;

    public IEnumerable<WiringFault> Generate(WiringContext context) => ThroughMainsInsulation(context).Concat(AcrossSensors(context));

    private IEnumerable<WiringFault> ThroughMainsInsulation(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Insulation && context.Design.FindPart(element.Subject)!.Type.ClassLetter == "E"
        let classes = (A: context.ClassOf(element.A), B: context.ClassOf(element.B))
        where classes.A is NetClass.Line or NetClass.Neutral || classes.B is NetClass.Line or NetClass.Neutral
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Subject} leaks through {element.Name}: damp or dirt.",
            [element.Subject],
            new Consequence(Severity.Shock, "Current leaks to metal; a residual-current device trips at the first heat."),
            $"CAUTION: {InsulationMode.Danger} Insulation test: above 1 MΩ, above 20 MΩ when new; dry it at 110 to 150 °C.",
            new Join(element.A, element.B, LowOhms, HighOhms));

    private IEnumerable<WiringFault> AcrossSensors(WiringContext context) =>
        from element in OwnElements.Of(context)
        where context.Design.FindPart(element.Subject)!.Type.ClassLetter == "B" && element.LowOhms >= LeastSensorOhms
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"Flux, damp or dirt lies across {element.Name} of {element.Subject}.",
            [element.Subject],
            new Consequence(Severity.DoesNotWork, "The temperature reads high while cold, so it heats too little."),
            "Log: all sensors cold and equal, within 2 K of the room; clean the plug.",
            new Join(element.A, element.B, LowOhms, HighOhms));
}
