namespace Proveout.Engine.Motion;

/// <summary>
/// Cuts a flat shape into triangles at its own corners: holes are joined to the outer line by bridges, then ears are cut off one by one
/// (D. Eberly, Triangulation by Ear Clipping; G. H. Meisters, Polygons have ears, American Mathematical Monthly 82 (1975)).
/// </summary>
internal static class EarClipping
{
    // Of mm²: far below what any maker resolves, far above rounding.
    private const double LeastArea = 1e-9;

    /// <summary>Triangles, anticlockwise, by index into the points of all lines in their order.</summary>
    public static List<(int First, int Second, int Third)> Cut(FlatShape shape)
    {
        (double Across, double Up)[] points = [.. shape.Lines.SelectMany(line => line.Points)];
        var ring = Joined(shape, points);
        List<(int First, int Second, int Third)> triangles = [];
        while (ring.Count > 3)
        {
            var ear = Enumerable.Range(0, ring.Count).FirstOrDefault(index => IsEar(ring, index, points), -1);
            if (ear < 0)
                throw new InvalidOperationException("The shape cannot be cut: its lines cross or touch.");
            triangles.Add((ring[Before(ring, ear)], ring[ear], ring[After(ring, ear)]));
            ring.RemoveAt(ear);
        }

        triangles.Add((ring[0], ring[1], ring[2]));
        return triangles;
    }

    private static List<int> Joined(FlatShape shape, (double Across, double Up)[] points)
    {
        List<int> ring = [.. Enumerable.Range(0, shape.Outer.Points.Count)];
        var first = ring.Count;
        List<int[]> holes = [];
        foreach (var hole in shape.Holes)
        {
            holes.Add([.. Enumerable.Range(first, hole.Points.Count)]);
            first += hole.Points.Count;
        }

        while (holes.Count > 0)
        {
            var (hole, at, from) = Bridge(ring, holes, points);
            ring.InsertRange(at + 1, [.. Enumerable.Range(0, hole.Length + 1).Select(step => hole[(from + step) % hole.Length]), ring[at]]);
            holes.Remove(hole);
        }

        return ring;
    }

    // The shortest way from the ring to a corner of a hole that crosses nothing.
    private static (int[] Hole, int At, int From) Bridge(List<int> ring, List<int[]> holes, (double Across, double Up)[] points)
    {
        (int From, int To)[] sides = [.. SidesOf(ring), .. holes.SelectMany(SidesOf)];
        var ways =
            from hole in holes
            from corner in Enumerable.Range(0, hole.Length)
            from at in Enumerable.Range(0, ring.Count)
            orderby PlaneAngles.Distance(points[ring[at]], points[hole[corner]])
            select (hole, at, corner);
        foreach (var (hole, at, corner) in ways)
            if (OpensTowards(ring, at, points, points[hole[corner]]) && !sides.Any(side => Crosses(points, (ring[at], hole[corner]), side)))
                return (hole, at, corner);
        throw new InvalidOperationException("The shape cannot be cut: a hole lies outside of it.");
    }

    private static IEnumerable<(int From, int To)> SidesOf(IReadOnlyList<int> ring) => ring.Select((point, index) => (point, ring[(index + 1) % ring.Count]));

    // A corner that stands in the ring twice, because of a bridge, opens each time to another side.
    private static bool OpensTowards(List<int> ring, int at, (double Across, double Up)[] points, (double Across, double Up) target)
    {
        var (before, here, after) = (points[ring[Before(ring, at)]], points[ring[at]], points[ring[After(ring, at)]]);
        return Turn(before, here, after) > 0
            ? Turn(here, after, target) > 0 && Turn(before, here, target) > 0
            : !(Turn(here, after, target) <= 0 && Turn(before, here, target) <= 0);
    }

    private static bool Crosses((double Across, double Up)[] points, (int From, int To) way, (int From, int To) side)
    {
        if (way.From == side.From || way.From == side.To || way.To == side.From || way.To == side.To)
            return false;
        var (a, b, c, d) = (points[way.From], points[way.To], points[side.From], points[side.To]);
        return Turn(a, b, c) * Turn(a, b, d) <= 0 && Turn(c, d, a) * Turn(c, d, b) <= 0;
    }

    private static bool IsEar(List<int> ring, int index, (double Across, double Up)[] points)
    {
        var (one, two, three) = (points[ring[Before(ring, index)]], points[ring[index]], points[ring[After(ring, index)]]);
        return Turn(one, two, three) > LeastArea && !ring.Any(corner => points[corner] is var point
            && point != one && point != two && point != three
            && Turn(one, two, point) >= 0 && Turn(two, three, point) >= 0 && Turn(three, one, point) >= 0);
    }

    private static int Before(List<int> ring, int index) => (index + ring.Count - 1) % ring.Count;

    private static int After(List<int> ring, int index) => (index + 1) % ring.Count;

    // Twice the area of a triangle; positive when it turns to the left.
    private static double Turn((double Across, double Up) a, (double Across, double Up) b, (double Across, double Up) c) =>
        ((b.Across - a.Across) * (c.Up - a.Up)) - ((b.Up - a.Up) * (c.Across - a.Across));
}
