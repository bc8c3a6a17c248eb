namespace Proveout.Engine.Motion;

/// <summary>A corner of a frame in space, where the drawing puts it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="XMillimetres">To the right.</param>
/// <param name="YMillimetres">To the back.</param>
/// <param name="ZMillimetres">Up.</param>
/// <param name="Height">Its height over a flat slab or below a level line, when that was measured; only differences count.</param>
public sealed record SpacePoint(string Name, double XMillimetres, double YMillimetres, double ZMillimetres, Uncertain? Height = null);
