namespace Proveout.Engine.Motion;

/// <summary>A plane z = c + a x + b y.</summary>
/// <param name="SlopeX">Rise along x, mm for each mm.</param>
/// <param name="SlopeY">Rise along y, mm for each mm.</param>
/// <param name="HeightMillimetres">Height at the origin.</param>
public readonly record struct Plane(double SlopeX, double SlopeY, double HeightMillimetres)
{
    /// <summary>Height at a place, in mm.</summary>
    public double At(double x, double y) => HeightMillimetres + (SlopeX * x) + (SlopeY * y);
}
