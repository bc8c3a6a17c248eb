using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A check and what a change of the machine makes of its reading.</summary>
/// <param name="Check">The check, as the changed machine has it; as the earlier one had it when it is gone.</param>
/// <param name="Standing">What becomes of its reading.</param>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record ComparedCheck(Check Check, CheckStanding Standing, string Reason);
