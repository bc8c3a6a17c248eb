using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Gathers everything that a machine's controllers have to be told. In words of the trade: no file of any controller.</summary>
public static class SettingsSheet
{
    private static readonly ISettingSource[] Sources =
    [
        new OutputSettings(), new InputSettings(), new AxisSettings(), new MotorSettings(), new HeatSettings(), new OpenSettings(),
    ];

    /// <summary>The sheet of a machine as designed; takes a second or two.</summary>
    /// <param name="machine">The machine.</param>
    public static SettingsView Of(LoadedMachine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        var design = machine.Design;
        var live = new LiveModel(new WiringContext(WiringNetworkBuilder.Build(design)));
        var known = new SettingsCase(design, ControllerAssignments.Outputs(live), ControllerAssignments.Inputs(live), HeatPrediction.Of(machine.Summary, design), BeltProof.MotorsThatMove(design.Motion));
        return new(machine.Summary, machine.Fingerprint, "", [.. Sources.SelectMany(source => source.Of(known)).Where(group => group.Settings.Count > 0)])
        {
            Mistakes = MistakeTables.Of(SettingTrials.Of(known)),
        };
    }

    /// <summary>The sheet of one build: what was measured on it takes the place of what was open.</summary>
    /// <param name="designed">The sheet of its machine.</param>
    /// <param name="build">Serial number of the build.</param>
    /// <param name="measurements">What was measured on it, oldest first.</param>
    public static SettingsView WithMeasurements(SettingsView designed, string build, IReadOnlyList<KeptMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(designed);
        var taken = measurements.Select(kept => OpenSettings.IdOf(kept.Analysis)).ToHashSet(StringComparer.Ordinal);
        var groups = designed.Groups.Select(group => group with { Settings = [.. group.Settings.Where(setting => !taken.Contains(setting.Id))] });
        return designed with { Build = build, Groups = [.. groups.Concat(MeasuredSettings.Of(measurements)).Where(group => group.Settings.Count > 0)] };
    }
}
