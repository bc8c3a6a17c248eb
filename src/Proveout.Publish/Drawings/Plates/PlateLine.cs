using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A line of equal height.</summary>
/// <param name="Label">Its height, in the unit of the drawing.</param>
/// <param name="Side">Below, at or above the zero of the drawing: −1, 0 or 1; each is drawn in its own way.</param>
/// <param name="Spots">Its corners.</param>
public sealed record PlateLine(string Label, int Side, ValueList<PlateSpot> Spots);
