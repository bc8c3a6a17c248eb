using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A symptom that a person can report, and what was said of it.</summary>
/// <param name="Check">The symptom, in words of what is seen when all is well.</param>
/// <param name="IsBad">True when it is reported as not so, false when it is reported as so; null when it was not asked.</param>
public sealed record SymptomAnswer(Check Check, bool? IsBad);
