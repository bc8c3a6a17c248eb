using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A reading that the sound machine cannot show.</summary>
/// <param name="Check">At which check.</param>
/// <param name="Shown">The reading, with its unit.</param>
/// <param name="Expected">What the sound machine shows, in words.</param>
public sealed record FailedReading(Check Check, string Shown, string Expected);
