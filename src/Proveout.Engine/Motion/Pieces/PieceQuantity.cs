namespace Proveout.Engine.Motion;

/// <summary>What a test piece tells of the machine; 0 of each is a piece as drawn.</summary>
public enum PieceQuantity
{
    /// <summary>Length along X over the drawn one, less 1.</summary>
    ScaleX,

    /// <summary>Length along Y over the drawn one, less 1.</summary>
    ScaleY,

    /// <summary>Length along Z over the drawn one, less 1.</summary>
    ScaleZ,

    /// <summary>How far Y leans towards +X for each mm along it.</summary>
    SkewXY,

    /// <summary>How far Z leans towards +X.</summary>
    SkewXZ,

    /// <summary>How far Z leans towards +Y.</summary>
    SkewYZ,

    /// <summary>Growth of an outside length, both walls together, in mm.</summary>
    Walls,

    /// <summary>Growth of a height by first and last layer, in mm.</summary>
    Height,

    /// <summary>Growth between slanting sides of the upright along X, in mm.</summary>
    SlantsAlongX,

    /// <summary>Growth between slanting sides of the upright along Y, in mm.</summary>
    SlantsAlongY,
}
