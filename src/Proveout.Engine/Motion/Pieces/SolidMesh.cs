namespace Proveout.Engine.Motion;

/// <summary>A solid by its skin of triangles, anticlockwise seen from outside.</summary>
/// <param name="Corners">Points, in mm.</param>
/// <param name="Triangles">Triangles by index of their corners.</param>
public sealed record SolidMesh(IReadOnlyList<SpaceVector> Corners, IReadOnlyList<(int First, int Second, int Third)> Triangles)
{
    /// <summary>Volume within, in mm³, by the divergence theorem; positive when the triangles face outward.</summary>
    public double CubicMillimetres
    {
        get
        {
            // From a corner of its own, so that a piece far from zero keeps its digits.
            var origin = Corners[0];
            return Triangles.Sum(triangle => Corners[triangle.First].Less(origin).Dot(Corners[triangle.Second].Less(origin).Cross(Corners[triangle.Third].Less(origin)))) / 6;
        }
    }

    /// <summary>Directed sides that are not met by exactly one the other way: 0 when the skin is closed and turned alike everywhere.</summary>
    public int OpenSides
    {
        get
        {
            Dictionary<(int, int), int> sides = [];
            foreach (var side in Triangles.SelectMany(SidesOf))
                sides[side] = sides.GetValueOrDefault(side) + 1;
            return sides.Count(side => side.Value != 1 || sides.GetValueOrDefault((side.Key.Item2, side.Key.Item1)) != 1);
        }
    }

    /// <summary>Corners less sides plus triangles: 2 for a ball, 2 less for each way through (Euler).</summary>
    public int EulerNumber => Triangles.SelectMany(triangle => (int[])[triangle.First, triangle.Second, triangle.Third]).Distinct().Count()
        - Triangles.SelectMany(SidesOf).Select(side => (Math.Min(side.From, side.To), Math.Max(side.From, side.To))).Distinct().Count()
        + Triangles.Count;

    /// <summary>Each corner moved.</summary>
    public SolidMesh Moved(Func<SpaceVector, SpaceVector> move) => this with { Corners = [.. Corners.Select(move)] };

    private static IEnumerable<(int From, int To)> SidesOf((int First, int Second, int Third) triangle) =>
        [(triangle.First, triangle.Second), (triangle.Second, triangle.Third), (triangle.Third, triangle.First)];
}
