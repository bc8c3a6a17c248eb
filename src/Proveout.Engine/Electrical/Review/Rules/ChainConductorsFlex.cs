using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Conductors in a chain are made for flexing.</summary>
internal sealed class ChainConductorsFlex : IReviewRule
{
    private const string Source = "IEC 60204-1 clauses 12.2 and 12.6.1 (class 5 or 6 for movement)";

    public string Id => "chain-conductors-flex";

    public string Words => "conductors in chains made for flexing";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var chains = context.Design.Routes.Where(route => route.Kind == RouteKind.Chain).Select(route => route.Name).ToHashSet(StringComparer.Ordinal);
        var moving = context.Design.Conductors.Where(conductor => conductor.Route.Any(chains.Contains)).ToArray();
        return moving.Where(conductor => conductor.Make.Flexing == false || conductor.Make.Strands is StrandKind.Solid or StrandKind.Stranded)
            .Select(conductor => Found(conductor, conductor.Route.First(chains.Contains)))
            .Concat(NotKnown.Of(
                this,
                moving.Where(conductor => conductor.Make is { Flexing: null, Strands: null }).Select(conductor => conductor.Id),
                "whether the conductors in chains are made for flexing",
                "flexing: true"));
    }

    private Finding Found(Conductor conductor, string chain) => new(
        Id,
        conductor.Make.Strands == StrandKind.Solid ? FindingSeverity.Error : FindingSeverity.Warning,
        [conductor.Id, chain],
        $"{conductor.Id} runs through {chain} and is {conductor.Make.Strands switch { StrandKind.Solid => "solid", StrandKind.Stranded => "coarsely stranded", _ => "not rated for continuous flexing" }}: it breaks inside its insulation after some thousand moves.",
        "Take a conductor rated for continuous flexing, of fine or extra-fine strands.",
        Source);
}
