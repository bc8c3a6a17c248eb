using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A point of a surface as one stands before it.</summary>
/// <param name="Across">Distance to the right of its lower left corner; not negative.</param>
/// <param name="Up">Height above its lower left corner; not negative.</param>
public readonly record struct PlanePoint(Length Across, Length Up);
