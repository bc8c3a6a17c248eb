namespace Proveout.Engine.Motion;

/// <summary>A point or a direction in space: X to the right, Y to the back, Z up; mm for a point.</summary>
public readonly record struct SpaceVector(double X, double Y, double Z)
{
    /// <summary>Sum of the products of the parts.</summary>
    public double Dot(SpaceVector other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>What is square to both, right-handed.</summary>
    public SpaceVector Cross(SpaceVector other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>From another point to this one.</summary>
    public SpaceVector Less(SpaceVector other) => new(X - other.X, Y - other.Y, Z - other.Z);

    /// <summary>Its length.</summary>
    public double Length => Math.Sqrt(Dot(this));
}
