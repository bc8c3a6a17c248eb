using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The walls of a bay.</summary>
/// <param name="Material">What they are made of.</param>
/// <param name="Thickness">How thick they are.</param>
/// <param name="Covered">Faces that lie against something else, and lose nothing that is counted on.</param>
public sealed record BayWall(WallMaterial Material, Length Thickness, ValueList<BayFace> Covered);
