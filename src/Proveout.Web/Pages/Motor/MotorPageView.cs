using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Motor;

/// <summary>What the motor page shows.</summary>
/// <param name="Measure">What was asked, where it can be kept, where it was kept, and why that was refused.</param>
/// <param name="Sheet">What followed; null when nothing was asked yet or it was refused.</param>
/// <param name="Problems">Why it was refused, a sentence each.</param>
public sealed record MotorPageView(MeasurePageView Measure, MotorView? Sheet, IReadOnlyList<string> Problems);
