using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Front;

/// <summary>What the front page shows.</summary>
public sealed record FrontView(
    Paged<BuildSummary> Builds,
    string Find,
    IReadOnlyList<MachineSummary> Machines,
    string Person,
    Refusal? Refusal);
