namespace Proveout.Engine.Machine;

/// <summary>A side of a belt, as one goes along it in the order of its list.</summary>
public enum BeltSide
{
    /// <summary>Its left.</summary>
    Left,

    /// <summary>Its right.</summary>
    Right,
}
