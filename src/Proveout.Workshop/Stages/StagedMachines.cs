using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>The stages of a machine as machines of their own, so that builds can be started and checks planned for each.</summary>
public static class StagedMachines
{
    /// <summary>The stages before the whole machine, in order; none when nothing comes later.</summary>
    public static IReadOnlyList<LoadedMachine> Before(LoadedMachine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        return [.. BuildStages.Of(machine.Design).Where(stage => stage.Missing.Count > 0).Select(stage => Of(machine, stage))];
    }

    private static LoadedMachine Of(LoadedMachine machine, BuildStage stage)
    {
        var missing = string.Join("-", stage.Missing.Select(fitting => fitting.Name));
        return new($"{machine.Id}-without-{missing}", machine.Path, stage.Design, Fingerprint.OfText($"{machine.Fingerprint} without {missing}")) { Texts = machine.Texts };
    }
}
