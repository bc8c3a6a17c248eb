using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Two cores of one cable are exchanged at one end, such as the coils of a motor split between its two outputs.</summary>
/// <remarks>Cores that end side by side are <see cref="EndsSwapped"/>.</remarks>
internal sealed class ConductorsExchanged : IWiringFaultRule
{
    public string Kind => "conductors-exchanged";

    public string Words => "cores of one cable exchanged at one end";

    public double Prior => Priors.ConductorsExchanged;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from cores in Cables.Of(context.Design)
        from pair in Cables.Pairs(cores)
        where Cables.AreCoresOfOne(pair.One, pair.Two)
        let near = (A: pair.One.To, B: Cables.EndAt(pair.Two, pair.One.To.Part))
        let far = (A: pair.One.From, B: Cables.EndAt(pair.Two, pair.One.From.Part))
        where near.A != near.B && !context.AreSame(near.A, near.B)
        where !context.AreNeighbours(near.A, near.B) && !context.AreNeighbours(far.A, far.B)
        where !LineNeutralSwapped.IsMainsPair(context, near.A, near.B)
        select OfPair(context, pair.One, pair.Two, near.A, near.B);

    private WiringFault OfPair(WiringContext context, Conductor one, Conductor two, TerminalReference a, TerminalReference b) => WiringContext.Fault(
        this,
        $"{one.Id}:{two.Id}",
        $"Conductors {WiringContext.Name(one)} and {WiringContext.Name(two)} between {one.From.Part} and {a.Part} are exchanged at one end: a colour was used for another purpose.",
        [one.Id, two.Id, a.Part],
        context.OfSwapping(one, a, two, b),
        "Eye: compare the order of colours in the plugs at both ends with the wire list.",
        [.. context.Move(one, a, b), .. context.Move(two, b, a)]);
}
