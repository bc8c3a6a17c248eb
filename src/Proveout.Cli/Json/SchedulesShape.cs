using Proveout.Publish.Schedules;

namespace Proveout.Cli;

/// <summary>The schedules of a machine, table by table.</summary>
internal sealed record SchedulesShape(string Format, string Machine, string Fingerprint, IReadOnlyList<ScheduleShape> Schedules)
{
    public static SchedulesShape Of(ScheduleBook book) => new(
        "proveout-schedules 1",
        book.Machine,
        book.Fingerprint,
        [.. book.Schedules.Select(schedule => new ScheduleShape(
            schedule.Id, schedule.Title, schedule.Purpose, [.. schedule.Columns.Select(column => column.Heading)], schedule.Rows, schedule.Total))]);
}

/// <summary>One table.</summary>
internal sealed record ScheduleShape(
    string Id, string Title, string Purpose, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, string Total);
