using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Mains and extra-low voltage do not share a route.</summary>
internal sealed class RoutesKeptApart : IReviewRule
{
    public string Id => "routes-kept-apart";

    public string Words => "mains and extra-low voltage in routes of their own";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var route in context.Design.Routes.Where(route => !route.Partition))
        {
            var stretches = context.Stretches.In(route.Name).Where(stretch => context.Context.ClassOf(stretch.Conductor) != NetClass.ProtectiveEarth).ToArray();
            var inside = stretches
                .Where(stretch => stretches.Any(other => stretch.Meets(other) && context.IsMains(stretch.Conductor) != context.IsMains(other.Conductor)))
                .ToLookup(stretch => context.IsMains(stretch.Conductor), stretch => stretch.Conductor.Id);
            if (inside[true].Any() && inside[false].Any() && !AreInsulatedForMains(context, route))
                yield return new Finding(
                    Id,
                    FindingSeverity.Warning,
                    [route.Name, .. inside[true], .. inside[false]],
                    $"In {route.Name} run mains conductors ({PathWords.List([.. inside[true]])}) and extra-low-voltage conductors ({PathWords.List([.. inside[false]])}).",
                    "Give the extra-low voltage a route of its own or a partition; where they must share, insulate every conductor for the highest voltage.",
                    "IEC 60204-1 clause 13.1.3");
        }
    }

    // IEC 60204-1 clause 13.1.3: circuits may share a duct when every conductor is insulated for the highest voltage in it.
    private static bool AreInsulatedForMains(ReviewContext context, Route route) => context.Design.Conductors
        .Where(conductor => conductor.Route.Contains(route.Name, StringComparer.Ordinal))
        .All(conductor => conductor.Make.Insulation?.Volts >= context.Design.Mains?.Voltage.Volts);
}
