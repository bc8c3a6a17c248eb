using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>Makes one schedule. A new one is one class and one line in <see cref="ScheduleMakers"/>.</summary>
internal interface IScheduleMaker
{
    /// <summary>The schedule of a machine.</summary>
    Schedule Of(ScheduleRequest request);
}
