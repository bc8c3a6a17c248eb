namespace Proveout.Workshop;

/// <summary>Makes settings of one kind, in groups whose settings come from the same.</summary>
internal interface ISettingSource
{
    /// <summary>The groups; without settings when the machine has none of the kind.</summary>
    IEnumerable<SettingGroup> Of(SettingsCase machine);
}
