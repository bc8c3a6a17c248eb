using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>What there is to see of a machine as designed, before and while it is built: review, paper to work from, single wires.</summary>
public interface IDesignDesk
{
    /// <summary>What the review of a design finds; null when there is no such machine.</summary>
    ReviewView? Review(string machineId);

    /// <summary>The schedules of a machine, with square codes that point at its pages; null when there is no such machine.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="pages">Address of the machine's pages; empty for codes that hold the label's words.</param>
    ScheduleBook? Schedules(string machineId, string pages);

    /// <summary>One conductor from end to end; null when there is no such machine or conductor.</summary>
    WireView? Wire(string machineId, string conductor);
}
