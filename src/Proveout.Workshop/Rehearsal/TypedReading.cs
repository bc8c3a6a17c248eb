namespace Proveout.Workshop;

/// <summary>A reading as typed.</summary>
/// <param name="CheckId">At which check.</param>
/// <param name="Text">What was typed.</param>
public sealed record TypedReading(string CheckId, string Text);
