namespace Proveout.Engine.Motion;

/// <summary>A spot of a plane, or a way between two, in millimetres.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Upward in the drawing.</param>
public readonly record struct PlaneSpot(double X, double Y)
{
    /// <summary>Its distance from the origin.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The same way, turned a quarter to the left.</summary>
    internal PlaneSpot Left => new(-Y, X);

    /// <summary>Sum.</summary>
    public static PlaneSpot operator +(PlaneSpot one, PlaneSpot two) => new(one.X + two.X, one.Y + two.Y);

    /// <summary>Difference.</summary>
    public static PlaneSpot operator -(PlaneSpot one, PlaneSpot two) => new(one.X - two.X, one.Y - two.Y);

    /// <summary>Multiple.</summary>
    public static PlaneSpot operator *(double factor, PlaneSpot one) => new(factor * one.X, factor * one.Y);

    internal double Dot(PlaneSpot other) => (X * other.X) + (Y * other.Y);

    internal double Cross(PlaneSpot other) => (X * other.Y) - (Y * other.X);
}
