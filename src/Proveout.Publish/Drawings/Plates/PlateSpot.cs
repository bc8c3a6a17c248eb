namespace Proveout.Publish.Drawings;

/// <summary>A place on a plate, seen from above.</summary>
/// <param name="X">To the right, in mm.</param>
/// <param name="Y">To the back, in mm.</param>
public readonly record struct PlateSpot(double X, double Y);
