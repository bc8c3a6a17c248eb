using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Lines of conductors on a surface: in a route they lie side by side.</summary>
internal sealed class WayLines(MachineLayout layout, Surface surface, BayScale scale)
{
    private const double MostStep = 0.7;

    private readonly Dictionary<string, List<string>> _lanes = layout.Ways
        .SelectMany(way => way.Legs.Where(leg => leg.Route is not null).Select(leg => (Route: leg.Route!, way.Conductor.Id)))
        .Distinct()
        .GroupBy(pair => pair.Route)
        .ToDictionary(group => group.Key, group => group.Select(pair => pair.Id).ToList(), StringComparer.Ordinal);

    /// <summary>The lines of one conductor; one that leaves the surface and comes back has several.</summary>
    public IEnumerable<IReadOnlyList<(double X, double Y)>> Of(ConductorWay way)
    {
        var line = new List<(double X, double Y)>();
        foreach (var leg in way.Legs)
        {
            if (leg.Surface != surface.Name || leg.Corners.Count == 0)
            {
                if (line.Count > 1)
                    yield return line;
                line = [];
                continue;
            }

            var corners = leg.Route is null ? [.. leg.Corners.Select(scale.At)] : Beside(leg, way.Conductor.Id);
            Append(line, corners);
        }

        if (line.Count > 1)
            yield return line;
    }

    // Conductors are dressed level and upright: a tail bends where it meets the lane of its route.
    private static void Append(List<(double X, double Y)> line, IReadOnlyList<(double X, double Y)> corners)
    {
        foreach (var corner in corners)
        {
            if (line.Count > 0 && line[^1] is var last && Math.Abs(last.X - corner.X) > 0.01 && Math.Abs(last.Y - corner.Y) > 0.01)
                line.Add((last.X, corner.Y));
            line.Add(corner);
        }
    }

    private List<(double X, double Y)> Beside(WayLeg leg, string conductor)
    {
        var lanes = _lanes[leg.Route!];
        var inside = layout.Design.Routes.First(route => route.Name == leg.Route).Inside?.Width.Millimeters ?? 10;
        var step = Math.Min(MostStep, inside * 0.85 / scale.By / lanes.Count);
        var offset = (lanes.IndexOf(conductor) - ((lanes.Count - 1) / 2.0)) * step;
        var corners = leg.Corners.Select(scale.At).ToList();
        return [.. corners.Select((corner, at) => (corner.X + (Touches(corners, at, isUpright: true) ? offset : 0), corner.Y + (Touches(corners, at, isUpright: false) ? offset : 0)))];
    }

    // A corner moves across each leg that it belongs to.
    private static bool Touches(List<(double X, double Y)> corners, int at, bool isUpright) =>
        (at > 0 && IsUpright(corners[at - 1], corners[at]) == isUpright) || (at + 1 < corners.Count && IsUpright(corners[at], corners[at + 1]) == isUpright);

    private static bool IsUpright((double X, double Y) from, (double X, double Y) to) => Math.Abs(to.Y - from.Y) > Math.Abs(to.X - from.X);
}
