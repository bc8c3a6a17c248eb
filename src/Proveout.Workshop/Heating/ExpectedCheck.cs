using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A check with its expectation in words.</summary>
/// <param name="Check">The check.</param>
/// <param name="Expected">What it should read.</param>
public sealed record ExpectedCheck(Check Check, string Expected);
