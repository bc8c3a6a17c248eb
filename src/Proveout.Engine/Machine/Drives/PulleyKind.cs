namespace Proveout.Engine.Machine;

/// <summary>What a belt runs over.</summary>
public enum PulleyKind
{
    /// <summary>A toothed pulley that turns with a shaft.</summary>
    Toothed,

    /// <summary>A smooth idler.</summary>
    Smooth,

    /// <summary>A toothed idler, which turns freely.</summary>
    ToothedIdler,
}
