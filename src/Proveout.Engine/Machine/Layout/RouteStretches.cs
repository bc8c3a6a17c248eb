namespace Proveout.Engine.Machine;

/// <summary>Which stretch of each route each conductor runs through; the whole of it where its way is not known.</summary>
public sealed class RouteStretches
{
    private readonly ILookup<string, RouteStretch> _of;

    /// <summary>Of the routes of a layout.</summary>
    public RouteStretches(MachineLayout layout) => _of = (
        from way in layout.Ways
        from route in way.Conductor.Route.Distinct()
        select (route, StretchOf(way, route))).ToLookup(item => item.route, item => item.Item2, StringComparer.Ordinal);

    /// <summary>The stretches of conductors in a route, in file order.</summary>
    public IEnumerable<RouteStretch> In(string route) => _of[route];

    /// <summary>The conductors at the place of a route where a measure of them is largest.</summary>
    public IReadOnlyList<Conductor> Fullest(string route, Func<IReadOnlyList<Conductor>, double> measure) => In(route)
        .Select(stretch => (IReadOnlyList<Conductor>)[.. In(route).Where(other => other.FromMm <= stretch.FromMm && stretch.FromMm < other.ToMm).Select(other => other.Conductor)])
        .MaxBy(measure) ?? [];

    private static RouteStretch StretchOf(ConductorWay way, string route) =>
        way.Missing is null && way.Legs.Where(leg => leg.Route == route && leg.Corners.Count > 0).ToArray() is { Length: > 0 } legs
            ? new(way.Conductor, legs.Min(leg => Math.Min(leg.FromMm, leg.ToMm)), legs.Max(leg => Math.Max(leg.FromMm, leg.ToMm)))
            : new(way.Conductor, double.NegativeInfinity, double.PositiveInfinity);
}
