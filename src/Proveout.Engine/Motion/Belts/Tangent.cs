namespace Proveout.Engine.Motion;

/// <summary>The straight line by which a belt leaves one circle and reaches another.</summary>
internal static class Tangent
{
    /// <summary>Its ends; null when the circles leave no room for it.</summary>
    /// <param name="from">Centre of the first circle.</param>
    /// <param name="fromRadius">Its radius; positive when the belt bends to the left there, negative to the right, 0 for a point.</param>
    /// <param name="to">Centre of the second circle.</param>
    /// <param name="toRadius">Its radius, signed alike.</param>
    public static (PlaneSpot Start, PlaneSpot End)? Of(PlaneSpot from, double fromRadius, PlaneSpot to, double toRadius)
    {
        var apart = to - from;
        var offset = toRadius - fromRadius;
        var square = apart.Dot(apart);
        if (square <= offset * offset)
            return null;
        // With u the direction and n its left normal, n·d is the difference of the signed radii, and what is left of d lies along u.
        var along = Math.Sqrt(square - (offset * offset));
        var direction = 1 / square * ((along * apart) - (offset * apart.Left));
        return (from - (fromRadius * direction.Left), to - (toRadius * direction.Left));
    }
}
