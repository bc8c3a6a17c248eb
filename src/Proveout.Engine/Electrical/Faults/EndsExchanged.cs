namespace Proveout.Engine.Electrical;

/// <summary>Two ends on one part, not side by side, have changed places.</summary>
internal sealed class EndsExchanged : IWiringFaultRule
{
    public string Kind => "ends-exchanged";

    public string Words => "two ends of one part exchanged, not side by side";

    public double Prior => Priors.EndsExchanged;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from pair in TerminalPairs.Apart(context)
        where !LineNeutralSwapped.IsMainsPair(context, pair.A, pair.B)
        from one in context.ConductorsAt(pair.A)
        from two in context.ConductorsAt(pair.B)
        where one.Id != two.Id && !Cables.AreCoresOfOne(one, two)
        select WiringContext.Fault(
            this,
            $"{one.Id}:{two.Id}:{pair.A}:{pair.B}",
            $"Conductors {WiringContext.Name(one)} and {WiringContext.Name(two)} are exchanged at {pair.A.Part}: each lands on the other's terminal, {pair.B.Terminal} and {pair.A.Terminal}.",
            [one.Id, two.Id, pair.A.Part],
            context.OfSwapping(one, pair.A, two, pair.B),
            "Eye: read every label on the part against the terminal's marking, seen from the wire side.",
            [.. context.Move(one, pair.A, pair.B), .. context.Move(two, pair.B, pair.A)]);
}
