using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.HeatLog;

/// <summary>What the page of a heater's log shows.</summary>
/// <param name="Heat">What the machine heats.</param>
/// <param name="Log">What the log says; null when none was given, or it was refused.</param>
/// <param name="Form">What was typed, where to keep it, and why it was refused.</param>
public sealed record HeatLogPageView(HeatView Heat, HeatLogView? Log, MeasurePageView Form);
