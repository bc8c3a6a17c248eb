namespace Proveout.Engine.Machine;

/// <summary>How much a place moves for each millimetre of an axis.</summary>
/// <param name="Axis">The axis.</param>
/// <param name="Factor">Millimetres for a millimetre; negative when it goes the other way.</param>
public sealed record AxisShare(string Axis, double Factor);
