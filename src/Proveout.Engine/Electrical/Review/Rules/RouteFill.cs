using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A duct, channel or chain is not too full.</summary>
internal sealed class RouteFill : IReviewRule
{
    public string Id => "route-fill";

    public string Words => "fill of ducts, channels and chains";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var inside = context.Design.Conductors
            .SelectMany(conductor => conductor.Route.Distinct().Select(route => (route, conductor)))
            .ToLookup(item => item.route, item => item.conductor, StringComparer.Ordinal);
        foreach (var route in context.Design.Routes.Where(route => route.Inside is not null && inside.Contains(route.Name)))
        {
            var bodies = OuterDiameter.Bodies(context.Stretches.Fullest(route.Name, OuterDiameter.RoomOf));
            var (width, height) = (route.Inside!.Value.Width.Millimeters, route.Inside.Value.Height.Millimeters);
            var fill = OuterDiameter.RoomOf(bodies) / (width * height);
            if (fill > Most(route.Kind).Design)
                yield return Found(route, bodies, fill);
        }

        foreach (var finding in NotKnown.Of(
            this,
            context.Design.Routes.Where(route => route.Inside is null && route.Kind != RouteKind.Bundle && inside.Contains(route.Name)).Select(route => route.Name),
            "the clear width and height",
            "inside: 25 x 40 mm"))
            yield return finding;
    }

    // Ducts: 40 % by design, 50 % at the end; chains: 60 %. A slot of the frame is taken for a duct. Common practice.
    private static (double Design, double End) Most(RouteKind kind) => kind switch
    {
        RouteKind.Chain => (0.6, 0.6),
        RouteKind.Bundle => (double.PositiveInfinity, double.PositiveInfinity),
        _ => (0.4, 0.5),
    };

    private Finding Found(Route route, IReadOnlyList<Conductor> bodies, double fill)
    {
        var most = Most(route.Kind);
        var isGuessed = bodies.Any(conductor => conductor.Make.Diameter is null);
        return new(
            Id,
            fill > most.End ? FindingSeverity.Warning : FindingSeverity.Note,
            [route.Name],
            $"{route.Name} is at its fullest filled to {ReviewContext.Number(100 * fill, 0)} % by {bodies.Count} conductors{(isGuessed ? ", those without a diameter taken as usual hook-up wire" : "")}; {ReviewContext.Number(100 * most.Design, 0)} % are a good design{(most.End > most.Design ? $", {ReviewContext.Number(100 * most.End, 0)} % the end" : "")}.",
            "Take a larger one, or lead some conductors another way.",
            "common practice; IEC 60204-1 clause 13.5.1")
        {
            Numbers = [new("fill", 100 * fill, "%"), new("most", 100 * most.End, "%"), new("conductors", bodies.Count, "")],
        };
    }
}
