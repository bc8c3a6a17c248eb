namespace Proveout.Engine.Motion;

/// <summary>How a calliper takes a length.</summary>
public enum PieceGrip
{
    /// <summary>Outside jaws over material.</summary>
    Outside,

    /// <summary>Inside jaws in a window.</summary>
    Inside,
}
