using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A plate's heights on a lattice.</summary>
/// <param name="Xs">Places along x, rising, in mm.</param>
/// <param name="Ys">Places along y, rising, in mm.</param>
/// <param name="Heights">Heights above the zero of the drawing, in mm, row by row from the front; not a number where nothing is known.</param>
/// <param name="Exaggeration">How many times larger heights are drawn than the plate.</param>
/// <param name="Step">Distance of two marks of the scale of heights, in mm.</param>
/// <param name="InMicrometres">True when heights are written in µm, false for mm.</param>
public sealed record PlateSurface(ValueList<double> Xs, ValueList<double> Ys, ValueList<double> Heights, double Exaggeration, double Step, bool InMicrometres)
{
    /// <summary>The height at a crossing of the lattice.</summary>
    public double At(int column, int row) => Heights[(row * Xs.Count) + column];
}
