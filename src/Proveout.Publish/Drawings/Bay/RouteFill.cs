using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A stretch of a route and how full it is.</summary>
/// <param name="FromMm">Where on the centre line it begins.</param>
/// <param name="ToMm">Where it ends.</param>
/// <param name="Share">Room that its conductors take, of its inside.</param>
internal sealed record RouteFill(double FromMm, double ToMm, double Share)
{
    /// <summary>The stretches of a route between the places where conductors come and go, none shorter than a length; a joined stretch shows its fullest.</summary>
    public static IReadOnlyList<RouteFill> Of(RouteStretches occupied, Route route, double leastMm)
    {
        if (route.Inside is not { } inside)
            return [];
        var room = inside.Width.Millimeters * inside.Height.Millimeters;
        // A conductor whose way is not known lies in the whole route, and has no station of its own.
        var stations = occupied.In(route.Name).SelectMany(stretch => new[] { stretch.FromMm, stretch.ToMm }).Where(double.IsFinite).Distinct().Order().ToList();
        var stretches = new List<RouteFill>();
        foreach (var (from, to) in stations.Zip(stations.Skip(1)))
        {
            var share = OuterDiameter.RoomOf(occupied.In(route.Name).Where(stretch => stretch.FromMm <= from && to <= stretch.ToMm).Select(stretch => stretch.Conductor)) / room;
            if (stretches.Count > 0 && stretches[^1].ToMm - stretches[^1].FromMm < leastMm)
                stretches[^1] = stretches[^1] with { ToMm = to, Share = Math.Max(stretches[^1].Share, share) };
            else
                stretches.Add(new(from, to, share));
        }

        return stretches;
    }
}
