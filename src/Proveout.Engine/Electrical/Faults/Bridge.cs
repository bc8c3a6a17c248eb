namespace Proveout.Engine.Electrical;

/// <summary>A strand or blob bridges two neighbouring terminals.</summary>
internal sealed class Bridge : IWiringFaultRule
{
    // A single 0.2 mm strand of a few millimetres is a few milliohms; touching loosely, some tenths of an ohm. Common practice.
    private const double LowOhms = 0.001;
    private const double HighOhms = 0.5;

    public string Kind => "bridge";

    public string Words => "bridges between neighbouring terminals";

    public double Prior => Priors.Bridge;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from pair in context.Neighbours
        let nodes = (A: context.Wiring.LandingNode(pair.A), B: context.Wiring.LandingNode(pair.B))
        select WiringContext.Fault(
            this,
            $"{pair.A}:{pair.B}",
            $"A strand bridges {pair.A} and {pair.B}.",
            [pair.A.Part, pair.B.Part],
            context.OfJoining(context.Wiring.TerminalNode(pair.A), context.Wiring.TerminalNode(pair.B)),
            "Eye with a lens and a light: no strand outside its ferrule or contact.",
            new Join(nodes.A, nodes.B, LowOhms, HighOhms));
}
