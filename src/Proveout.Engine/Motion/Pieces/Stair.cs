namespace Proveout.Engine.Motion;

/// <summary>Five steps that rise towards +X: heights from small to large, so that scale and the first layer show apart.</summary>
internal static class Stair
{
    private const int Steps = 5;

    // Thicker stock is rarely at hand.
    private const double MostMilledMm = 20;

    /// <summary>Height of its last step.</summary>
    public static double HeightOf(TestPieceSize size) => size.Making == PieceMaking.Milled ? Math.Min(MostMilledMm, size.UprightMm) : size.UprightMm;

    public static PiecePart Of(TestPieceSize size, SpaceVector at, int number)
    {
        var (side, width) = (size.UprightMm, 0.3 * size.UprightMm);
        var (run, rise) = (side / Steps, HeightOf(size) / Steps);
        List<(double, double)> points = [(0, 0), (side, 0)];
        for (var index = Steps; index >= 1; index--)
            points.AddRange([(index * run, index * rise), ((index - 1) * run, index * rise)]);
        FlatShape shape = new(new Outline(points), []);
        var mesh = Extrusion.Of(shape, [(0, 0), (width, 0)], (across, up, along) => new(at.X + across, at.Y + width - along, at.Z + up));
        return new("stair", "from the front", "heights", shape, mesh,
        [
            .. Enumerable.Range(1, Steps).Select(index => new PieceMeasure(
                number + index - 1, $"height of step {index} of the stair, counted from the lowest", PieceGrip.Outside, PieceGrowth.Height, new(0, 0, 1), index * rise, ((index - 0.5) * run, index * rise), ((index - 0.5) * run, 0))),
        ]);
    }
}
