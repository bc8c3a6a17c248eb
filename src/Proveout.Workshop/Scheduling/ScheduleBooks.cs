using Proveout.Engine.Electrical;
using Proveout.Publish.Schedules;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>Makes the schedules that a builder works from.</summary>
public static class ScheduleBooks
{
    /// <summary>Length of a reel when nobody says: rings of hook-up wire as shops sell them, common practice.</summary>
    public static readonly Length UsualReel = Length.FromMeters(25);

    /// <summary>All schedules and labels of a machine.</summary>
    /// <param name="planned">The machine with its plan, whose checks are shared out to the steps of work.</param>
    /// <param name="reel">Length of wire on a reel.</param>
    /// <param name="pages">Address of the machine's pages for the square codes; empty when the codes shall hold the label's words.</param>
    public static ScheduleBook Of(PlannedMachine planned, Length reel, string pages)
    {
        var (machine, context) = (planned.Machine, planned.Campaign.Context);
        var steps = WorkOrder.Of(context);
        var ready = WorkChecks.After(context, steps, planned.Plan.Checks.Select(planned.Explained));
        return new(
            machine.Design.Name,
            machine.Design.Summary,
            machine.Fingerprint,
            [.. planned.Dictionary.SetUps[0].Cautions],
            ScheduleMakers.Of(new(machine.Design, reel, steps, ready)),
            WireLabel.AllOf(machine.Design, pages));
    }
}
