namespace Proveout.Engine.Motion;

/// <summary>A square tube whose wall is one laid line.</summary>
internal static class SingleWall
{
    public static PiecePart Of(TestPieceSize size, SpaceVector at, double height)
    {
        var side = 0.5 * size.UprightMm;
        var outer = Outline.Rectangle(0, 0, side, side);
        FlatShape shape = new(outer, [outer.Grown(-size.LineMm).Reversed]);
        return new("single wall", "from above", "flow: the wall is one laid line", shape, Extrusion.Of(shape, [(0, 0), (height, 0)], (across, up, along) => new(at.X + across, at.Y + up, at.Z + along)), []);
    }
}
