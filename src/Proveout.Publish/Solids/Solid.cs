namespace Proveout.Publish.Solids;

/// <summary>A body by its closed skin of triangles.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Corners">Its corners, in mm; none negative.</param>
/// <param name="Triangles">Triangles by index of their corners, anticlockwise seen from outside.</param>
public sealed record Solid(string Name, IReadOnlyList<(double X, double Y, double Z)> Corners, IReadOnlyList<(int First, int Second, int Third)> Triangles);
