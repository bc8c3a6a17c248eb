namespace Proveout.Workshop;

/// <summary>How a person's second factor stands.</summary>
/// <param name="HasPassword">False for who comes in by join codes alone; a second factor needs a first.</param>
/// <param name="On">The factor; null when it is off.</param>
/// <param name="Notes">What was done to it, the last first.</param>
public sealed record SecondFactorStanding(bool HasPassword, SecondFactor? On, IReadOnlyList<AccessNote> Notes);
