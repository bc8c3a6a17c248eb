namespace Proveout.Engine.Motion;

/// <summary>Input shapers of the literature; docs/methods/resonance.md says where each comes from.</summary>
public enum ShaperKind
{
    /// <summary>Two impulses: no vibration left at the design frequency (ZV).</summary>
    ZeroVibration,

    /// <summary>Three impulses: its derivative is zero as well (ZVD).</summary>
    ZeroVibrationDerivative,

    /// <summary>Four impulses: the second derivative is zero as well (ZVDD).</summary>
    ZeroVibrationSecondDerivative,

    /// <summary>Three impulses: a tolerated rest at the design frequency, none on both sides of it (EI).</summary>
    ExtraInsensitive,

    /// <summary>Four impulses: the rest stays within the tolerance over two humps (two-hump EI).</summary>
    TwoHump,

    /// <summary>Five impulses: over three humps (three-hump EI).</summary>
    ThreeHump,
}
