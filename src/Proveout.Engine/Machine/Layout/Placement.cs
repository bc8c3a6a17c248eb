using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Where a part is mounted.</summary>
/// <param name="On">A surface, a rail, or another part that carries it.</param>
/// <param name="At">Lower left corner of the part as mounted, from that of the surface or carrier. Null on a rail.</param>
/// <param name="Along">On a rail: distance of the part from the rail's first end. Null elsewhere.</param>
/// <param name="Turn">How far it is turned.</param>
public sealed record Placement(string On, PlanePoint? At, Length? Along, QuarterTurn Turn);
