namespace Proveout.Engine.Motion;

/// <summary>How a machine places what it is told to place: scales along its axes, and axes that lean.</summary>
/// <param name="ScaleX">Length along X over the told one.</param>
/// <param name="ScaleY">Length along Y over the told one, square to X.</param>
/// <param name="ScaleZ">Length along Z over the told one, square to the plate.</param>
/// <param name="SkewXY">How far Y leans towards +X for each mm.</param>
/// <param name="SkewXZ">How far Z leans towards +X for each mm.</param>
/// <param name="SkewYZ">How far Z leans towards +Y for each mm.</param>
public sealed record PieceDistortion(double ScaleX = 1, double ScaleY = 1, double ScaleZ = 1, double SkewXY = 0, double SkewXZ = 0, double SkewYZ = 0)
{
    /// <summary>Where a point comes to lie.</summary>
    public SpaceVector Placed(SpaceVector told)
    {
        var (y, z) = (ScaleY * told.Y, ScaleZ * told.Z);
        return new((ScaleX * told.X) + (SkewXY * y) + (SkewXZ * z), y + (SkewYZ * z), z);
    }

    /// <summary>Distance between two parallel sides after it; a calliper reads it square to them, whichever way they then face.</summary>
    /// <param name="facing">Direction square to them as drawn, of length 1.</param>
    /// <param name="distance">Distance as drawn.</param>
    public double Between(SpaceVector facing, double distance)
    {
        // Sides x·n = d go to sides x'·m = d, where n is the transposed map of m.
        var x = facing.X / ScaleX;
        var y = (facing.Y / ScaleY) - (SkewXY * x);
        var z = (facing.Z / ScaleZ) - (SkewXZ * x) - (SkewYZ * y);
        return distance / new SpaceVector(x, y, z).Length;
    }
}
