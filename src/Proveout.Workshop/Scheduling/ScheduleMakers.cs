using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The register of schedules.</summary>
public static class ScheduleMakers
{
    private static readonly IScheduleMaker[] All =
        [new PartList(), new WireList(), new CutList(), new TerminationList(), new ConnectorList(), new JumperMap(), new TorqueList(), new OrderOfWork()];

    /// <summary>Every schedule of a machine, in the order in which a builder needs them.</summary>
    public static IReadOnlyList<Schedule> Of(ScheduleRequest request) => [.. All.Select(maker => maker.Of(request))];
}
