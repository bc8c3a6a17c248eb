using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Tension;

/// <summary>What the tension page shows.</summary>
/// <param name="Measure">What was typed, where it can be kept, where it was kept, and why it was refused.</param>
/// <param name="Sounding">What followed; null when nothing was asked yet or it was refused.</param>
public sealed record TensionPageView(MeasurePageView Measure, SoundingView? Sounding);
