using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Tension;

/// <summary>What the tension page shows.</summary>
/// <param name="Typed">What was typed.</param>
/// <param name="Sounding">What followed; null when nothing was asked yet or it was refused.</param>
/// <param name="Refusal">Why it was refused.</param>
public sealed record TensionPageView(IReadOnlyDictionary<string, string> Typed, SoundingView? Sounding, Refusal? Refusal);
