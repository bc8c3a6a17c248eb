using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What differs between two revisions of a machine, and what that makes of readings already taken.</summary>
public sealed class RevisionComparison
{
    private readonly ReadingValidity _validity;

    private RevisionComparison(PlannedMachine before, PlannedMachine after)
    {
        Changes = DesignChanges.Between(before.Machine.Design, after.Machine.Design);
        Tugs = TugsAgain.After(after.Machine.Design, Changes);
        _validity = new ReadingValidity(before, after, Changes);
        var planned = PlanOf(after).ToArray();
        Checks = [.. planned.Select(_validity.Of)];
        Gone = [.. PlanOf(before).Except(planned, StringComparer.Ordinal).Select(_validity.Of).Where(check => check.Standing == CheckStanding.Gone)];
    }

    /// <summary>The differences, the most dangerous first.</summary>
    public IReadOnlyList<DesignChange> Changes { get; }

    /// <summary>Every check of the changed machine's plan, in its order, with what becomes of a reading taken before.</summary>
    public IReadOnlyList<ComparedCheck> Checks { get; }

    /// <summary>Checks of the earlier plan that the changed machine does not have.</summary>
    public IReadOnlyList<ComparedCheck> Gone { get; }

    /// <summary>Joints to tug again, for hands were beside them.</summary>
    public IReadOnlyList<TugAgain> Tugs { get; }

    /// <summary>Compares two machines that are planned already.</summary>
    public static RevisionComparison Of(PlannedMachine before, PlannedMachine after) => new(before, after);

    /// <summary>What becomes of the readings that a build of the earlier machine has on record.</summary>
    public IReadOnlyList<RecordedReading> Recorded(BenchState state) =>
    [
        .. state.Steps
            .Where(step => step.ReadingText.Length > 0)
            .Select(step => new RecordedReading(step, _validity.Of(step.Check.Id))),
    ];

    private static IEnumerable<string> PlanOf(PlannedMachine planned) => planned.Plan.Checks.Select(check => planned.Dictionary.Checks[check].Id);
}
