namespace Proveout.Engine.Motion;

/// <summary>Fingers that lean ever further towards +X: the first that sags says from where on support is needed.</summary>
internal static class FingerRow
{
    public static readonly int[] Leans = [30, 40, 50, 60, 70];

    public static PiecePart Of(TestPieceSize size, SpaceVector at)
    {
        var side = size.UprightMm;
        var (width, bar, thick, reach, pitch) = (0.2 * side, 0.075 * side, 0.1 * side, 0.25 * side, 0.44 * side);
        var length = pitch * Leans.Length;
        List<(double, double)> points = [(0, 0), (length, 0), (length, bar)];
        foreach (var (index, lean) in Leans.Index().Reverse())
        {
            var foot = (0.05 * side) + (index * pitch);
            var tip = bar + (reach / Math.Tan(lean * Math.PI / 180));
            points.AddRange([(foot + thick, bar), (foot + thick + reach, tip), (foot + reach, tip), (foot, bar)]);
        }

        points.Add((0, bar));
        FlatShape shape = new(new Outline(points), []);
        var mesh = Extrusion.Of(shape, [(0, 0), (width, 0)], (across, up, along) => new(at.X + across, at.Y + width - along, at.Z + up));
        return new("leaning fingers", "from the front", $"overhang: they lean {string.Join(", ", Leans)} degrees from upright", shape, mesh, []);
    }
}
