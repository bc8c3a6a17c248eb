namespace Proveout.Workshop;

/// <summary>Everything that a machine's controllers have to be told.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Fingerprint">Fingerprint of its file.</param>
/// <param name="Build">Serial number of the build whose measurements count; empty when none do.</param>
/// <param name="Groups">The settings.</param>
public sealed record SettingsView(MachineSummary Machine, string Fingerprint, string Build, IReadOnlyList<SettingGroup> Groups)
{
    /// <summary>What can hurt; before everything that is done with them.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "A wrong output, sensor kind or limit can set fire to a machine or crush a hand. Enter these only when the dead checks and the stages of energising have passed.",
        "After entering them stay beside the machine, a hand at its stop, until everything has warmed up and moved once.",
        "A guard is a program. An independent thermal cut-off is what stops a heater whose switch has failed.",
    ];

    /// <summary>Wrong settings, and the fewest trials that surely show all of them that can be shown.</summary>
    public required MistakeTable Mistakes { get; init; }

    /// <summary>How many are not known yet.</summary>
    public int Open => Groups.Sum(group => group.Settings.Count(setting => setting.State == SettingState.Open));
}
