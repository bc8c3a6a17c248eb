using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>One thing to look at, tug, feel or read off on the walk round.</summary>
/// <param name="Check">What to do and what good looks like.</param>
/// <param name="Expected">What it should be, in words.</param>
/// <param name="Shows">How many mistakes it shows that no reading surely catches.</param>
public sealed record WalkCheck(Check Check, string Expected, int Shows);
