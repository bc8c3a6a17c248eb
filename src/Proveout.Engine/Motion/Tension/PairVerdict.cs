namespace Proveout.Engine.Motion;

/// <summary>What a comparison of two belts says.</summary>
public enum PairVerdict
{
    /// <summary>Surely equal within the limit.</summary>
    Equal,

    /// <summary>The left one is surely tighter by more than the limit.</summary>
    LeftTighter,

    /// <summary>The right one is surely tighter by more than the limit.</summary>
    RightTighter,

    /// <summary>The uncertainty reaches over the limit.</summary>
    CannotTell,
}
