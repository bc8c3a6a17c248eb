namespace Proveout.Engine.Motion;

/// <summary>Distances and angles in a plane.</summary>
internal static class PlaneAngles
{
    public static double Distance((double X, double Y) one, (double X, double Y) other) =>
        Math.Sqrt(((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y)));

    /// <summary>The angle at a corner beyond a right one, in rad; positive when the corner is open.</summary>
    public static double BeyondRight((double X, double Y) corner, (double X, double Y) first, (double X, double Y) second)
    {
        var (ax, ay) = (first.X - corner.X, first.Y - corner.Y);
        var (bx, by) = (second.X - corner.X, second.Y - corner.Y);
        return Math.Atan2(Math.Abs((ax * by) - (ay * bx)), (ax * bx) + (ay * by)) - (Math.PI / 2);
    }
}
