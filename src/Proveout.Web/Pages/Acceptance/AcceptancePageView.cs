using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Acceptance;

/// <summary>What the page of acceptance shows.</summary>
/// <param name="Acceptance">What to look at, and what was found on the build.</param>
/// <param name="Address">Where the page is; its files are below.</param>
/// <param name="State">The build; null for a machine as designed.</param>
/// <param name="Person">Who looks.</param>
/// <param name="Refusal">Why the last answer was not taken.</param>
public sealed record AcceptancePageView(
    BuildAcceptance Acceptance, string Address, BenchState? State, string Person, Refusal? Refusal)
{
    /// <summary>What to look at.</summary>
    public AcceptanceView List => Acceptance.List;
}
