namespace Proveout.Engine.Motion;

/// <summary>
/// An eight-sided ring that stands on one side: width, height and both slants show whether an axis of the plate is square to the height.
/// One bore marks the end towards +X, two the end towards +Y.
/// </summary>
internal static class UprightPart
{
    private static readonly double Half = Math.Sqrt(0.5);

    public static PiecePart AlongX(TestPieceSize size, SpaceVector at, int number)
    {
        var (side, thickness) = (size.UprightMm, 0.3 * size.UprightMm);
        var shape = ShapeOf(side, 1);
        var mesh = Extrusion.Of(shape, [(0, 0), (thickness, 0)], (across, up, along) => new(at.X + across, at.Y + thickness - along, at.Z + up));
        return new("upright along X", "from the front", "squareness of Z to X, and height", shape, mesh, [.. MeasuresOf(side, number, "X", PieceGrowth.SlantsAlongX, (across, up) => new(across, 0, up))]);
    }

    public static PiecePart AlongY(TestPieceSize size, SpaceVector at, int number)
    {
        var (side, thickness) = (size.UprightMm, 0.3 * size.UprightMm);
        var shape = ShapeOf(side, 2);
        var mesh = Extrusion.Of(shape, [(0, 0), (thickness, 0)], (across, up, along) => new(at.X + along, at.Y + across, at.Z + up));
        return new("upright along Y", "from the right", "squareness of Z to Y, and height", shape, mesh, [.. MeasuresOf(side, number, "Y", PieceGrowth.SlantsAlongY, (across, up) => new(0, across, up))]);
    }

    private static FlatShape ShapeOf(double side, int bores)
    {
        var centre = (side / 2, side / 2);
        (double Across, double Up)[] places = [(0.4, 0.166), (0.4, -0.166)];
        return new(
            Outline.EightSided(side, centre),
            [
                Outline.EightSided(0.6 * side, centre).Reversed,
                .. places.Take(bores).Select(place => Outline.Circle(0.08 * side, ((0.5 + place.Across) * side, (0.5 + place.Up) * side)).Reversed),
            ]);
    }

    private static IEnumerable<PieceMeasure> MeasuresOf(double side, int number, string axis, PieceGrowth slants, Func<double, double, SpaceVector> place)
    {
        var middle = side / 2;
        (double Across, double Up) OnSide(double across, double up, double half) => (middle + (half * across), middle + (half * up));
        PieceMeasure Measure(int offset, string words, PieceGrip grip, PieceGrowth growth, double across, double up, double length) => new(
            number + offset, words, grip, growth, place(across, up), length, OnSide(across, up, length / 2), OnSide(across, up, -length / 2));
        yield return Measure(0, $"outside over the upright, along {axis}", PieceGrip.Outside, PieceGrowth.Walls, 1, 0, side);
        yield return Measure(1, $"height of the upright along {axis}", PieceGrip.Outside, PieceGrowth.Height, 0, 1, side);
        yield return Measure(2, $"outside over the slants that face up towards +{axis}", PieceGrip.Outside, slants, Half, Half, side);
        yield return Measure(3, $"outside over the slants that face up towards -{axis}", PieceGrip.Outside, slants, -Half, Half, side);
        yield return Measure(4, $"inside the upright, along {axis}", PieceGrip.Inside, PieceGrowth.Walls, 1, 0, 0.6 * side);
    }
}
