namespace Proveout.Engine.Machine;

/// <summary>Which way a belt bends at a point, as one goes along it in the order of its list.</summary>
public enum BeltTurn
{
    /// <summary>It is clamped there.</summary>
    None,

    /// <summary>To the left: counter-clockwise round the pulley.</summary>
    Left,

    /// <summary>To the right: clockwise round the pulley.</summary>
    Right,
}
