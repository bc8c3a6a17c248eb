using Proveout.Workshop;

namespace Proveout.Web.Pages.Motor;

/// <summary>What the motor page shows.</summary>
/// <param name="Typed">What stands in the address.</param>
/// <param name="Sheet">What followed; null when nothing was asked yet or it was refused.</param>
/// <param name="Problems">Why it was refused, a sentence each.</param>
public sealed record MotorPageView(IReadOnlyDictionary<string, string> Typed, MotorView? Sheet, IReadOnlyList<string> Problems);
