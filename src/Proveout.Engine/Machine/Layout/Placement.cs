using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Where a part is mounted.</summary>
/// <param name="On">A surface or a rail.</param>
/// <param name="At">On a surface: the lower left corner of the part as mounted. Null on a rail.</param>
/// <param name="Along">On a rail: distance of the part from the rail's first end. Null on a surface.</param>
/// <param name="Turn">How far it is turned.</param>
public sealed record Placement(string On, PlanePoint? At, Length? Along, QuarterTurn Turn);
