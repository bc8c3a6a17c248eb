namespace Proveout.Engine.Electrical;

/// <summary>Two conductors at neighbouring terminals have changed places.</summary>
internal sealed class EndsSwapped : IWiringFaultRule
{
    public string Kind => "ends-swapped";

    public string Words => "two ends swapped";

    public double Prior => Priors.EndsSwapped;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from pair in context.Neighbours
        where !PolarisedParts.IsPolarisedPair(context.Design, pair.A, pair.B) && !LineNeutralSwapped.IsMainsPair(context, pair.A, pair.B)
        from one in context.ConductorsAt(pair.A)
        from two in context.ConductorsAt(pair.B)
        where one.Id != two.Id
        select WiringContext.Fault(
            this,
            $"{one.Id}:{two.Id}:{pair.A}:{pair.B}",
            $"Conductors {WiringContext.Name(one)} and {WiringContext.Name(two)} have changed places at {pair.A} and {pair.B}.",
            [one.Id, two.Id, pair.A.Part, pair.B.Part],
            context.OfSwapping(one, pair.A, two, pair.B),
            "Eye: read both labels against the terminals' markings.",
            [.. context.Move(one, pair.A, pair.B), .. context.Move(two, pair.B, pair.A)]);
}
