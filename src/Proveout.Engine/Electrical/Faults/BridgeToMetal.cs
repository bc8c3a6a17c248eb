using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A conductor touches metal beside it: pinched, chafed, or a whisker at its end.</summary>
internal sealed class BridgeToMetal : IWiringFaultRule
{
    private const double LowOhms = 0.001;
    private const double HighOhms = 0.5;

    public string Kind => "bridge-to-metal";

    public string Words => "conductors that touch the frame or a body";

    public double Prior => Priors.BridgeToMetal;

    public IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var metals = new MetalPlaces(context);
        return from conductor in context.Design.Conductors
               where context.ClassOf(conductor) != NetClass.ProtectiveEarth
               from metal in Beside(metals, conductor)
               where conductor.From != metal && conductor.To != metal && !context.AreSame(conductor.From, metal)
               select WiringContext.Fault(
                   this,
                   $"{conductor.Id}:{metal}",
                   $"Conductor {WiringContext.Name(conductor)} from {conductor.From} to {conductor.To} touches the metal of {metal.Part}.",
                   [conductor.Id, metal.Part],
                   context.OfJoining(context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(metal)),
                   "Eye along the whole run: no pinch, no shiny line, edge strip on every raw edge; insulation test.",
                   new Join(context.CopperOf(conductor).A, context.Wiring.TerminalNode(metal), LowOhms, HighOhms));
    }

    private static IEnumerable<TerminalReference> Beside(MetalPlaces metals, Conductor conductor) =>
        new[] { metals.InPlaceOf(conductor.From.Part), metals.InPlaceOf(conductor.To.Part), metals.Along(conductor) }
            .OfType<TerminalReference>()
            .Distinct()
            .Take(1);
}
