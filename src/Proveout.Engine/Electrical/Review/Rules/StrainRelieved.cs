using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Conductors that move are held against pull at both ends of their chain.</summary>
internal sealed class StrainRelieved : IReviewRule
{
    public string Id => "strain-relief";

    public string Words => "strain relief of conductors in chains";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var used = context.Design.Conductors.SelectMany(conductor => conductor.Route).ToHashSet(StringComparer.Ordinal);
        var chains = context.Design.Routes.Where(route => route.Kind == RouteKind.Chain && used.Contains(route.Name)).ToArray();
        return chains
            .Where(route => route.Relief is StrainRelief.None or StrainRelief.Fixed)
            .Select(route => new Finding(
                Id,
                FindingSeverity.Warning,
                [route.Name],
                $"The conductors of {route.Name} are {(route.Relief == StrainRelief.None ? "not held against pull" : "held at the still end only")}: every move pulls at their terminals.",
                "Clamp them at both ends, at least at the moving one, 10 to 30 diameters from the last link.",
                "IEC 60204-1 clause 13.4.2; distances, common practice"))
            .Concat(NotKnown.Of(this, chains.Where(route => route.Relief is null).Select(route => route.Name), "where the conductors are held against pull", "relief: both"));
    }
}
