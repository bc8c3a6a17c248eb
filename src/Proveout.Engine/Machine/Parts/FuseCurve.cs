namespace Proveout.Engine.Machine;

/// <summary>How fast a protective device interrupts an overcurrent.</summary>
public enum FuseCurve
{
    /// <summary>Quick-acting miniature fuse, IEC 60127-2.</summary>
    Quick,

    /// <summary>Time-lag miniature fuse, IEC 60127-2.</summary>
    TimeLag,

    /// <summary>Blade fuse of road vehicles, ISO 8820-3.</summary>
    Blade,

    /// <summary>Circuit-breaker, characteristic B, IEC 60898-1.</summary>
    BreakerB,

    /// <summary>Circuit-breaker, characteristic C, IEC 60898-1.</summary>
    BreakerC,

    /// <summary>Thermal cut-off: opens by heat around it, not by its current (IEC 60691).</summary>
    Thermal,
}
