namespace Proveout.Engine.Electrical;

/// <summary>What a live finding is about.</summary>
public enum LiveFindingKind
{
    /// <summary>No state that agrees with itself was found.</summary>
    CannotTell,

    /// <summary>A terminal sees more than it bears.</summary>
    OverVoltage,

    /// <summary>A polarised port sees its voltage reversed.</summary>
    ReverseVoltage,

    /// <summary>Mains voltage on the extra-low-voltage side.</summary>
    MainsOnExtraLowVoltage,

    /// <summary>A conductor carries more than it bears, for longer than it bears it.</summary>
    ConductorOverload,

    /// <summary>A contact that is poor or should not be there heats.</summary>
    HotJoint,

    /// <summary>A protective device interrupts.</summary>
    ProtectionInterrupts,

    /// <summary>Metal that can be touched is live for longer than allowed.</summary>
    TouchVoltage,

    /// <summary>Something is live although it is switched off.</summary>
    LiveWhenOff,

    /// <summary>An insulation fault would leave metal live.</summary>
    ProtectionMissing,

    /// <summary>Load current returns through the protective conductor.</summary>
    ProtectiveCurrent,

    /// <summary>A load runs past its protective device.</summary>
    ProtectionBypassed,

    /// <summary>A load takes more power than in the sound machine.</summary>
    TooMuchPower,

    /// <summary>A load takes less power than in the sound machine, or none.</summary>
    TooLittlePower,

    /// <summary>A motor's winding carries another current than in the sound machine.</summary>
    WrongMotion,

    /// <summary>A load runs although nothing commands it, or a stop is pressed.</summary>
    OnUncommanded,

    /// <summary>An output or contact carries more than it bears.</summary>
    OutputOverload,

    /// <summary>A supply is at its limit.</summary>
    SupplyOverload,

    /// <summary>A signal reads another value than in the sound machine.</summary>
    WrongSignal,

    /// <summary>A terminal that carries data is joined to something else than in the sound machine.</summary>
    WrongConnection,
}
