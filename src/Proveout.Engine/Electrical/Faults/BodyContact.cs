using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A lead or winding of a heater, motor or sensor touches the metal body of its part.</summary>
internal sealed class BodyContact : IWiringFaultRule
{
    private static readonly string[] Letters = ["B", "E", "M"];

    // From a crushed lead to a winding that is burnt through half way; common practice.
    private const double LowOhms = 0.001;
    private const double HighOhms = 10;

    public string Kind => "body-contact";

    public string Words => "heaters, motors and sensors that touch their body";

    public double Prior => Priors.BodyContact;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        where Letters.Contains(part.Type.ClassLetter)
        from body in MetalPlaces.BodiesOf(part).TakeLast(1)
        from terminal in TerminalPairs.WiredTerminals(context, part)
        where context.Design.FindTerminal(terminal)!.Role != TerminalRole.ProtectiveEarth && terminal.Terminal != body
        select WiringContext.Fault(
            this,
            $"{terminal}:{body}",
            $"The lead of {part.Designation} ({part.Name}) at {terminal.Terminal} touches its metal body.",
            [part.Designation],
            context.OfJoining(context.Wiring.TerminalNode(terminal), context.Wiring.PartNode(part.Designation, body)),
            "Ohms from each lead to the body, cold, hot and while wiggling; insulation test.",
            new Join(context.Wiring.TerminalNode(terminal), context.Wiring.PartNode(part.Designation, body), LowOhms, HighOhms));
}
