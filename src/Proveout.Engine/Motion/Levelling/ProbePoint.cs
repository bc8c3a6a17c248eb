namespace Proveout.Engine.Motion;

/// <summary>A height measured at a place of the plate.</summary>
/// <param name="XMillimetres">Place along x.</param>
/// <param name="YMillimetres">Place along y.</param>
/// <param name="HeightMillimetres">Height found there; higher plate, larger number.</param>
public readonly record struct ProbePoint(double XMillimetres, double YMillimetres, double HeightMillimetres);
