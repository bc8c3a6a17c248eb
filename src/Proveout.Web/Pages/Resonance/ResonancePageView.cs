using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Resonance;

/// <summary>What the resonance page shows.</summary>
/// <param name="Measured">What was typed and chosen, the builds, and where it was kept.</param>
/// <param name="Study">What followed; null when nothing was asked yet or it was refused.</param>
public sealed record ResonancePageView(MeasurePageView Measured, ResonanceStudyView? Study);
