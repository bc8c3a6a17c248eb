using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Belts;

/// <summary>The page of belts, and where it can be kept.</summary>
/// <param name="Belts">The belts.</param>
/// <param name="Keep">Builds in whose record it can be kept.</param>
public sealed record BeltsPagePair(BeltsPageView Belts, MeasurePageView Keep);
