using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.HeatLog;

/// <summary>What the page of a log by hand shows.</summary>
/// <param name="Heat">What the machine heats.</param>
/// <param name="Log">The readings so far.</param>
/// <param name="IsFull">True when the heater was told to run at full output at the last of them.</param>
/// <param name="Refusal">Why the last reading was not taken; null when it was.</param>
public sealed record HandLogPageView(HeatView Heat, HandLog Log, bool IsFull, Refusal? Refusal);
