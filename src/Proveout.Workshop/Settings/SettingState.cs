namespace Proveout.Workshop;

/// <summary>How well a setting is known.</summary>
public enum SettingState
{
    /// <summary>Nothing says yet what it should be.</summary>
    Open,

    /// <summary>The machine file says it.</summary>
    Designed,

    /// <summary>Computed from the machine file.</summary>
    Computed,

    /// <summary>From a measurement of this very build.</summary>
    Measured,
}
