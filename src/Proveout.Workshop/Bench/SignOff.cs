namespace Proveout.Workshop;

/// <summary>A signature in the journal.</summary>
/// <param name="Sequence">Entry number.</param>
/// <param name="When">When, in universal time.</param>
/// <param name="Person">Who.</param>
/// <param name="Role">In which role.</param>
/// <param name="Statement">What is stated.</param>
public sealed record SignOff(long Sequence, DateTimeOffset When, string Person, string Role, string Statement);
