using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Front;

/// <summary>What the front page shows.</summary>
public sealed record FrontView(
    Paged<BuildSummary> Builds,
    string Find,
    IReadOnlyList<MachineSummary> Machines,
    string Person,
    Refusal? Refusal)
{
    /// <summary>The machine that a link chose; empty when none did.</summary>
    public string Chosen { get; init; } = "";
}
