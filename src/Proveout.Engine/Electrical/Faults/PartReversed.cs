using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A polarised part or supply input is wired the wrong way round.</summary>
internal sealed class PartReversed : IWiringFaultRule
{
    public string Kind => "part-reversed";

    public string Words => "polarised parts reversed";

    public double Prior => Priors.PartReversed;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from pair in context.Neighbours
        where PolarisedParts.IsPolarisedPair(context.Design, pair.A, pair.B)
        from one in context.ConductorsAt(pair.A)
        from two in context.ConductorsAt(pair.B)
        where one.Id != two.Id
        select WiringContext.Fault(
            this,
            $"{one.Id}:{two.Id}:{pair.A}:{pair.B}",
            $"{pair.A.Part} is wired the wrong way round: {WiringContext.Name(one)} and {WiringContext.Name(two)} have changed places at {pair.A.Terminal} and {pair.B.Terminal}.",
            [one.Id, two.Id, pair.A.Part],
            OfReversing(context.OfSwapping(one, pair.A, two, pair.B)),
            "Live test: sign of the voltage at the plug before it is mated.",
            [.. context.Move(one, pair.A, pair.B), .. context.Move(two, pair.B, pair.A)]);

    private static Consequence OfReversing(Consequence swapped) =>
        swapped.Severity == Severity.Hidden
            ? swapped
            : Consequence.Worse(new Consequence(Severity.Damage, "The part sees its voltage reversed."), swapped);
}
