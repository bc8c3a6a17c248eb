namespace Proveout.Engine.Motion;

/// <summary>A corner or mark of a frame, where the drawing puts it.</summary>
/// <param name="Name">How the builder calls it.</param>
/// <param name="XMillimetres">Place along x.</param>
/// <param name="YMillimetres">Place along y.</param>
public sealed record FramePoint(string Name, double XMillimetres, double YMillimetres);
