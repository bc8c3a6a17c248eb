namespace Proveout.Engine.Electrical;

/// <summary>What sort of state the controls are in.</summary>
public enum ControlStateKind
{
    /// <summary>Every switch with an off position is off, or one of them alone.</summary>
    Off,

    /// <summary>Switched on, nothing started, no output commanded.</summary>
    Idle,

    /// <summary>A start button is being pressed.</summary>
    Starting,

    /// <summary>Running, no output commanded.</summary>
    Running,

    /// <summary>Running, no output commanded, one sensor or stop switch operated.</summary>
    Sensing,

    /// <summary>Running, one output commanded.</summary>
    OneOutput,

    /// <summary>Running, every output commanded.</summary>
    AllOutputs,

    /// <summary>A stop is held pressed while every output is commanded.</summary>
    Stopped,

    /// <summary>A stop has been pressed and released again while every output is commanded.</summary>
    Released,
}
