using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Acceptance;

/// <summary>What the page of acceptance shows.</summary>
/// <param name="List">What to look at.</param>
/// <param name="Address">Where the page is; its files are below.</param>
/// <param name="State">The build; null for a machine as designed.</param>
/// <param name="Found">What was found on the build, by item.</param>
/// <param name="Person">Who looks.</param>
/// <param name="Refusal">Why the last answer was not taken.</param>
public sealed record AcceptancePageView(
    AcceptanceView List, string Address, BenchState? State, IReadOnlyDictionary<string, AcceptedItem> Found, string Person, Refusal? Refusal);
