namespace Proveout.Engine.Electrical;

/// <summary>Two cores of one cable touch inside it: crushed by a tie, worn in a chain, melted at a hot part.</summary>
internal sealed class BridgeInCable : IWiringFaultRule
{
    private const double LowOhms = 0.001;
    private const double HighOhms = 0.5;

    public string Kind => "bridge-in-cable";

    public string Words => "cores of one cable that touch";

    public double Prior => Priors.BridgeInCable;

    // Neighbours at either end are bridged there already: the same circuit.
    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from cores in Cables.Of(context.Design)
        from pair in Cables.Pairs(cores)
        where pair.One.Route.Intersect(pair.Two.Route, StringComparer.Ordinal).Any() || (pair.One.Route.Count == 0 && pair.Two.Route.Count == 0)
        let near = (A: pair.One.To, B: Cables.EndAt(pair.Two, pair.One.To.Part))
        let far = (A: pair.One.From, B: Cables.EndAt(pair.Two, pair.One.From.Part))
        where !context.AreNeighbours(near.A, near.B) && !context.AreNeighbours(far.A, far.B) && !context.AreSame(near.A, near.B)
        select WiringContext.Fault(
            this,
            $"{pair.One.Id}:{pair.Two.Id}",
            $"Conductors {WiringContext.Name(pair.One)} and {WiringContext.Name(pair.Two)} touch inside their cable.",
            [pair.One.Id, pair.Two.Id],
            context.OfJoining(context.Wiring.TerminalNode(near.A), context.Wiring.TerminalNode(near.B)),
            "Eye and hand along the cable: no crushed, worn or melted place; repeat the reading while moving it through its travel.",
            new Join(context.CopperOf(pair.One).A, context.CopperOf(pair.Two).A, LowOhms, HighOhms));
}
