using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A chain bends its conductors no tighter than they bear.</summary>
internal sealed class BendRadius : IReviewRule
{
    // Radius over diameter: unscreened conductors that move 7.5, those that lie still 4. Common practice.
    private const double Moving = 7.5;
    private const double Still = 4;

    public string Id => "bend-radius";

    public string Words => "bending radius of routes against the diameter of their conductors";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var inside = context.Design.Conductors
            .SelectMany(conductor => conductor.Route.Distinct().Select(route => (route, conductor)))
            .ToLookup(item => item.route, item => item.conductor, StringComparer.Ordinal);
        var used = context.Design.Routes.Where(route => inside.Contains(route.Name)).ToArray();
        return used.Where(route => route.BendRadius is not null)
            .Select(route => Found(route, inside[route.Name].MaxBy(OuterDiameter.Of)!))
            .OfType<Finding>()
            .Concat(NotKnown.Of(this, used.Where(route => route.BendRadius is null && route.Kind == RouteKind.Chain).Select(route => route.Name), "the bending radius", "bend-radius: 28 mm"));
    }

    private Finding? Found(Route route, Conductor thickest)
    {
        var (radius, diameter) = (route.BendRadius!.Value.Millimeters, OuterDiameter.Of(thickest));
        var factor = route.Kind == RouteKind.Chain ? Moving : Still;
        return radius >= factor * diameter - 1e-9
            ? null
            : new(
                Id,
                FindingSeverity.Warning,
                [route.Name, thickest.Id],
                $"{route.Name} bends to {ReviewContext.Number(radius)} mm; {thickest.Id} is {ReviewContext.Number(diameter, 2)} mm thick and asks for {ReviewContext.Number(factor)} times that, {ReviewContext.Number(factor * diameter)} mm.",
                "Take a chain of larger radius, or thinner conductors.",
                "IEC 60204-1 clause 12.6.1 and common practice")
            {
                Numbers = [new("radius", radius, "mm"), new("least radius", factor * diameter, "mm")],
            };
    }
}
