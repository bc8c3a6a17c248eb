namespace Proveout.Engine.Motion;

/// <summary>A flat piece of material with holes, in mm.</summary>
/// <param name="Outer">Its outer line, anticlockwise.</param>
/// <param name="Holes">Its holes, clockwise; none touches another or the outer line.</param>
public sealed record FlatShape(Outline Outer, IReadOnlyList<Outline> Holes)
{
    /// <summary>Outer line and holes.</summary>
    public IEnumerable<Outline> Lines => [Outer, .. Holes];

    /// <summary>Area of the material.</summary>
    public double Area => Lines.Sum(line => line.SignedArea);

    /// <summary>Every wall moved out of the material, as by a line that is laid too wide.</summary>
    public FlatShape Grown(double millimetres) => new(Outer.Grown(millimetres), [.. Holes.Select(hole => hole.Grown(millimetres))]);
}
