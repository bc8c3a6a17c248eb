namespace Proveout.Engine.Machine;

/// <summary>How far a part is turned on its surface, counter-clockwise.</summary>
public enum QuarterTurn
{
    /// <summary>As its type is drawn.</summary>
    None,

    /// <summary>By 90°.</summary>
    One,

    /// <summary>By 180°.</summary>
    Two,

    /// <summary>By 270°.</summary>
    Three,
}
