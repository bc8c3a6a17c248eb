namespace Proveout.Engine.Electrical;

/// <summary>A conductor's end lands on the terminal beside its own.</summary>
internal sealed class EndOnNeighbour : IWiringFaultRule
{
    public string Kind => "end-on-neighbour";

    public string Words => "ends on a neighbouring terminal";

    public double Prior => Priors.EndOnNeighbour;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from pair in context.Neighbours
        where !ContactSense.AreThrows(context.Design, pair.A, pair.B)
        from move in new[] { (From: pair.A, To: pair.B), (From: pair.B, To: pair.A) }
        from conductor in context.ConductorsAt(move.From)
        where conductor.From != move.To && conductor.To != move.To
        select WiringContext.Fault(
            this,
            $"{conductor.Id}:{move.From}:{move.To}",
            $"Conductor {WiringContext.Name(conductor)} lands on {move.To} instead of {move.From}.",
            [conductor.Id, move.From.Part, move.To.Part],
            context.OfMoving(conductor, move.From, move.To),
            "Eye: read the terminal's marking at the conductor's end against its label.",
            context.Move(conductor, move.From, move.To));
}
