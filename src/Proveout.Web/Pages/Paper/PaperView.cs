using Proveout.Publish.Schedules;

namespace Proveout.Web.Pages.Paper;

/// <summary>What the page of schedules shows.</summary>
/// <param name="MachineId">The machine, as in addresses.</param>
/// <param name="Book">Its schedules.</param>
public sealed record PaperView(string MachineId, ScheduleBook Book);
