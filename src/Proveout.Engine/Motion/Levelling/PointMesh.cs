namespace Proveout.Engine.Motion;

/// <summary>Triangles between scattered points (Delaunay, by taking in one point after another: Bowyer 1981 and Watson 1981, from memory), over which heights are linear.</summary>
internal sealed class PointMesh
{
    // Far enough that the three helping points hardly touch the hull.
    private const double Far = 1e3;

    // Of the size of the map; a point this little outside counts as on the rim.
    private const double Rim = 1e-5;

    private readonly (double X, double Y)[] _places;
    private readonly double[] _heights;
    private readonly List<(int A, int B, int C)> _triangles;
    private readonly double _left;
    private readonly double _front;
    private readonly double _size;

    public PointMesh(IReadOnlyList<ProbePoint> points)
    {
        (_left, _front) = (points.Min(point => point.XMillimetres), points.Min(point => point.YMillimetres));
        _size = Math.Max(points.Max(point => point.XMillimetres) - _left, points.Max(point => point.YMillimetres) - _front);
        var places = points.GroupBy(point => (Math.Round(point.XMillimetres, 1), Math.Round(point.YMillimetres, 1))).ToArray();
        _heights = [.. places.Select(place => place.Average(point => point.HeightMillimetres))];
        _places = [.. places.Select(place => Inside(place.Average(point => point.XMillimetres), place.Average(point => point.YMillimetres))), (-Far, -Far), (Far, -Far), (0, Far)];
        _triangles = Joined();
    }

    /// <summary>Height at a place; not a number outside all triangles.</summary>
    public double HeightAt(double x, double y)
    {
        var at = Inside(x, y);
        foreach (var (a, b, c) in _triangles)
        {
            var area = Twice(_places[a], _places[b], _places[c]);
            var (first, second) = (Twice(at, _places[b], _places[c]) / area, Twice(at, _places[c], _places[a]) / area);
            if (first >= -Rim && second >= -Rim && 1 - first - second >= -Rim)
                return (first * _heights[a]) + (second * _heights[b]) + ((1 - first - second) * _heights[c]);
        }

        return double.NaN;
    }

    private (double X, double Y) Inside(double x, double y) => ((x - _left) / _size, (y - _front) / _size);

    private List<(int A, int B, int C)> Joined()
    {
        var count = _heights.Length;
        // Points of a lattice lie on common circles; which diagonal is drawn does not matter, only that every test answers alike.
        (double X, double Y)[] apart = [.. _places.Select((place, index) => (place.X + (1e-7 * Math.Sin(12.9898 * index)), place.Y + (1e-7 * Math.Sin(78.233 * index))))];
        List<(int A, int B, int C)> triangles = [(count, count + 1, count + 2)];
        for (var point = 0; point < count; point++)
        {
            var at = apart[point];
            var open = triangles.Where(triangle => Circles(apart, triangle, at)).ToArray();
            var rim = open.SelectMany(triangle => new[] { (triangle.A, triangle.B), (triangle.B, triangle.C), (triangle.C, triangle.A) }).ToHashSet();
            triangles.RemoveAll(open.ToHashSet().Contains);
            triangles.AddRange(rim.Where(edge => !rim.Contains((edge.Item2, edge.Item1))).Select(edge => (edge.Item1, edge.Item2, point)));
        }

        return [.. triangles.Where(triangle => Math.Max(triangle.A, Math.Max(triangle.B, triangle.C)) < count && Twice(_places[triangle.A], _places[triangle.B], _places[triangle.C]) > Rim * Rim)];
    }

    // Twice the area, positive when the corners run to the left.
    private static double Twice((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    private static bool Circles((double X, double Y)[] places, (int A, int B, int C) triangle, (double X, double Y) at)
    {
        var (ax, ay) = (places[triangle.A].X - at.X, places[triangle.A].Y - at.Y);
        var (bx, by) = (places[triangle.B].X - at.X, places[triangle.B].Y - at.Y);
        var (cx, cy) = (places[triangle.C].X - at.X, places[triangle.C].Y - at.Y);
        return (((ax * ax) + (ay * ay)) * ((bx * cy) - (cx * by)))
            - (((bx * bx) + (by * by)) * ((ax * cy) - (cx * ay)))
            + (((cx * cx) + (cy * cy)) * ((ax * by) - (bx * ay))) > 0;
    }
}
