namespace Proveout.Engine.Motion;

/// <summary>
/// Two eight-sided rings on four spokes. Opposite sides face each other along both axes and both diagonals, four times over from large to small, outside
/// and inside in turn: so that scale, growth of walls and skew each show apart. One bore marks the side towards +X, two the side towards +Y.
/// </summary>
internal static class DoubleRing
{
    // The first layers of a print are pressed wide: the lower edge stands back, so that the jaws do not touch it.
    private const double SetBackMm = 0.6;

    private static readonly (double Share, PieceGrip Grip, string Words)[] Sizes =
    [
        (1, PieceGrip.Outside, "outside over the outer ring"),
        (0.8, PieceGrip.Inside, "inside the outer ring"),
        (0.5, PieceGrip.Outside, "outside over the inner ring"),
        (0.3, PieceGrip.Inside, "inside the inner ring"),
    ];

    private static readonly (double Angle, string Words)[] Ways =
    [
        (0, "along X"), (Math.PI / 2, "along Y"), (Math.PI / 4, "along the diagonal from front left to back right"), (3 * Math.PI / 4, "along the diagonal from front right to back left"),
    ];

    public static PiecePart Of(TestPieceSize size)
    {
        var shape = ShapeOf(size.RingMm);
        var thickness = size.ThicknessMm;
        var setBack = Math.Min(SetBackMm, thickness / 4);
        (double, double)[] levels = size.Making == PieceMaking.Milled ? [(0, 0), (thickness, 0)] : [(0, -setBack), (setBack, 0), (thickness, 0)];
        return new("double ring", "from above, X to the right", "size along both axes and both diagonals, growth of walls, squareness of X to Y", shape, Extrusion.Of(shape, levels, (across, up, along) => new(across, up, along)), [.. MeasuresOf(size.RingMm)]);
    }

    /// <summary>The shape seen from above.</summary>
    public static FlatShape ShapeOf(double ring)
    {
        var centre = (ring / 2, ring / 2);
        (double Across, double Up)[] bores = [(0.45, 0.12), (0.12, 0.45), (-0.12, 0.45)];
        return new(
            Outline.EightSided(ring, centre),
            [
                .. Enumerable.Range(0, 4).Select(quarter => Between(ring, quarter)),
                Outline.EightSided(0.3 * ring, centre).Reversed,
                .. bores.Select(bore => Outline.Circle(0.04 * ring, ((0.5 + bore.Across) * ring, (0.5 + bore.Up) * ring)).Reversed),
            ]);
    }

    // What is free between two spokes; spokes run from corner to corner, so that no side is touched in its middle.
    private static Outline Between(double ring, int quarter)
    {
        var centre = (ring / 2, ring / 2);
        var (outer, inner) = (Outline.EightSided(0.8 * ring, centre).Points, Outline.EightSided(0.5 * ring, centre).Points);
        // Along a side that meets the spoke at 67.5°.
        var reach = 0.03 * ring / Math.Sin(3 * Math.PI / 8);
        var (first, middle, last) = (2 * quarter, (2 * quarter) + 1, ((2 * quarter) + 2) % 8);
        return new Outline(
        [
            Towards(outer[first], outer[middle], reach), outer[middle], Towards(outer[last], outer[middle], reach),
            Towards(inner[last], inner[middle], reach), inner[middle], Towards(inner[first], inner[middle], reach),
        ]).Reversed;
    }

    private static (double Across, double Up) Towards((double Across, double Up) from, (double Across, double Up) to, double reach)
    {
        var share = reach / PlaneAngles.Distance(from, to);
        return (from.Across + (share * (to.Across - from.Across)), from.Up + (share * (to.Up - from.Up)));
    }

    private static IEnumerable<PieceMeasure> MeasuresOf(double ring)
    {
        var number = 1;
        foreach (var (share, grip, words) in Sizes)
            foreach (var (angle, way) in Ways)
            {
                SpaceVector facing = new(Math.Cos(angle), Math.Sin(angle), 0);
                var half = share * ring / 2;
                yield return new(
                    number++, $"{words}, {way}", grip, PieceGrowth.Walls, facing, share * ring,
                    ((ring / 2) + (half * facing.X), (ring / 2) + (half * facing.Y)), ((ring / 2) - (half * facing.X), (ring / 2) - (half * facing.Y)));
            }
    }
}
