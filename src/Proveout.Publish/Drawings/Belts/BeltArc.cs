namespace Proveout.Publish.Drawings;

/// <summary>A bend of a belt, in millimetres of the machine.</summary>
/// <param name="FromX">Where it begins, to the right.</param>
/// <param name="FromY">Where it begins, upward.</param>
/// <param name="ToX">Where it ends, to the right.</param>
/// <param name="ToY">Where it ends, upward.</param>
/// <param name="Radius">Radius of the pitch line.</param>
/// <param name="IsLeft">True when it bends to the left.</param>
/// <param name="IsLong">True when it takes more than half a turn.</param>
public sealed record BeltArc(double FromX, double FromY, double ToX, double ToY, double Radius, bool IsLeft, bool IsLong);
