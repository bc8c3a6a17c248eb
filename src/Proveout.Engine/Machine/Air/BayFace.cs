namespace Proveout.Engine.Machine;

/// <summary>A face of a bay, as one stands before it.</summary>
public enum BayFace
{
    /// <summary>Towards the one who looks: the lid or door.</summary>
    Front,

    /// <summary>Behind the parts.</summary>
    Back,

    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,

    /// <summary>Above.</summary>
    Top,

    /// <summary>Below.</summary>
    Bottom,
}
