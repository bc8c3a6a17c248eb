namespace Proveout.Engine.Motion;

/// <summary>What makes a length longer outside and shorter inside by the same, whatever the length.</summary>
public enum PieceGrowth
{
    /// <summary>Walls that stand too far out, or a cutter thinner than set.</summary>
    Walls,

    /// <summary>First layer and last layer.</summary>
    Height,

    /// <summary>Slanting sides of the upright part along X, one of which hangs over.</summary>
    SlantsAlongX,

    /// <summary>Slanting sides of the upright part along Y.</summary>
    SlantsAlongY,
}
