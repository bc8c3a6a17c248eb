using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Says which checks a build in stages needs at each of them.</summary>
public static class StageViews
{
    private const double SecondsAMinute = 60;

    /// <summary>The view; null when nothing of the machine comes later.</summary>
    /// <param name="machine">The whole machine.</param>
    /// <param name="plan">Plans a machine.</param>
    public static StagesView? Of(LoadedMachine machine, Func<LoadedMachine, PlannedMachine> plan)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(plan);
        var before = StagedMachines.Before(machine);
        if (before.Count == 0)
            return null;
        PlannedMachine[] planned = [.. before.Append(machine).Select(plan)];
        return new(
            machine.Summary,
            planned[0].Plan.Checks.Count,
            planned[0].Plan.Order.Time.Seconds / SecondsAMinute,
            before[0].Summary,
            [.. machine.Design.Later.Select((fitting, at) => Of(machine.Design, fitting, planned[at], planned[at + 1]))]);
    }

    private static FittedLater Of(MachineDesign whole, LaterFitting fitting, PlannedMachine was, PlannedMachine now)
    {
        var changes = DesignChanges.Between(was.Machine.Design, now.Machine.Design);
        return new(
            fitting.Name,
            fitting.Note,
            [.. fitting.Parts.Select(part => whole.FindPart(part)!).Select(part => part.Name.Length > 0 ? $"{part.Designation} ({part.Name})" : part.Designation)],
            MistakeTables.Of(Brought(was, now, changes)),
            [.. TugsAgain.After(now.Machine.Design, changes).Select(tug => tug.Sentence)],
            [.. fitting.Affects.Select(effect => Again(effect, now.Machine.Design))]);
    }

    // What the work can have brought: mistakes that were not there to be made before, and those at what hands were at.
    private static FaultDictionary Brought(PlannedMachine was, PlannedMachine now, IReadOnlyList<DesignChange> changes)
    {
        var known = was.Dictionary.Faults.Select(fault => fault.Id).ToHashSet(StringComparer.Ordinal);
        var touched = TouchedFaults.Of(now.Campaign, changes, new Dictionary<string, string>());
        int[] brought = [.. Enumerable.Range(0, now.Dictionary.Faults.Count).Where(fault => touched[fault] || !known.Contains(now.Dictionary.Faults[fault].Id))];
        return new(now.Dictionary.SetUps, now.Dictionary.Checks, [.. brought.Select(fault => now.Dictionary.Faults[fault])], [.. brought.Select(now.Dictionary.ResponseOf)]);
    }

    private static string Again(LaterEffect effect, MachineDesign now) => effect switch
    {
        LaterEffect.Air => "Air: the temperature in the bay and at the supply's inlet after an hour at work, against each part's limit.",
        LaterEffect.Heat => now.Heated.Count > 0
            ? $"Heat: a new log of the warm-up and hold of {string.Join(" and ", now.Heated.Select(body => body.Name))}; guards and gains by it."
            : "Heat: how warm everything gets after an hour at work.",
        LaterEffect.Frame => "Frame: diagonals, level and plate map.",
        _ => "Motion: the belts by their sound, the resonances, and lost steps over the whole travel.",
    };
}
