using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A check on the energised machine.</summary>
/// <param name="Check">What to observe.</param>
/// <param name="Expected">What the sound machine shows, in words.</param>
/// <param name="Tells">How many mistakes it excludes for the stages after it.</param>
public sealed record StageCheck(Check Check, string Expected, int Tells);
