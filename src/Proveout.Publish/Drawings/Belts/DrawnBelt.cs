using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A belt to be drawn.</summary>
/// <param name="Name">Its name.</param>
/// <param name="StartX">Where its first span begins, to the right.</param>
/// <param name="StartY">Where its first span begins, upward.</param>
/// <param name="Bends">Its bends in order, joined by straight spans.</param>
/// <param name="EndX">Where its last span ends, to the right.</param>
/// <param name="EndY">Where its last span ends, upward.</param>
public sealed record DrawnBelt(string Name, double StartX, double StartY, ValueList<BeltArc> Bends, double EndX, double EndY);
