namespace Proveout.Workshop;

/// <summary>Makes one group of settings.</summary>
internal interface ISettingSource
{
    /// <summary>The group; without settings when the machine has none of the kind.</summary>
    SettingGroup Of(SettingsCase machine);
}
