namespace Proveout.Engine.Motion;

/// <summary>A corner of a fitted frame.</summary>
/// <param name="Name">Its name.</param>
/// <param name="BeyondRight">Its angle beyond a right one, in rad; positive when it is open.</param>
public sealed record FrameCorner(string Name, Uncertain BeyondRight);
