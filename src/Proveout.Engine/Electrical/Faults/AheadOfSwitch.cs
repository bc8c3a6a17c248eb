using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A conductor lands on the other side of its switch, contactor or fuse, so that what it feeds is neither switched nor protected by it.</summary>
/// <remarks>Sides that are neighbours are <see cref="EndOnNeighbour"/>.</remarks>
internal sealed class AheadOfSwitch : IWiringFaultRule
{
    public string Kind => "ahead-of-switch";

    public string Words => "ends on the other side of a switch or fuse";

    public double Prior => Priors.AheadOfSwitch;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from pair in SwitchedPairs.Of(part)
        let a = new TerminalReference(part.Designation, pair.A)
        let b = new TerminalReference(part.Designation, pair.B)
        where context.IsWired(a) && context.IsWired(b) && !context.AreNeighbours(a, b)
        where context.ClassOf(a) is NetClass.Line or NetClass.Neutral or NetClass.Positive
        from move in new[] { (From: a, To: b), (From: b, To: a) }
        from conductor in context.ConductorsAt(move.From)
        where conductor.From != move.To && conductor.To != move.To
        select WiringContext.Fault(
            this,
            $"{conductor.Id}:{move.From}:{move.To}",
            $"Conductor {WiringContext.Name(conductor)} lands on {move.To} instead of {move.From}: the other side of the switch or fuse.",
            [conductor.Id, part.Designation],
            context.OfMoving(conductor, move.From, move.To),
            "Ohms from the supply to the load with the switch off and the fuse out: open.",
            context.Move(conductor, move.From, move.To));
}
