namespace Proveout.Engine.Motion;

/// <summary>A place where the plate's height can be set: a screw or a lift motor.</summary>
/// <param name="Name">How the builder calls it.</param>
/// <param name="XMillimetres">Place along x.</param>
/// <param name="YMillimetres">Place along y.</param>
public sealed record Support(string Name, double XMillimetres, double YMillimetres);
