namespace Proveout.Workshop;

/// <summary>One thing to look at on the way into use.</summary>
/// <param name="Id">Identifier, lower case with hyphens; unique on a list.</param>
/// <param name="Phase">When.</param>
/// <param name="Title">What, in a few words.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="Good">What is good.</param>
/// <param name="Otherwise">What to do when it is not.</param>
/// <param name="Source">Where the criterion comes from.</param>
public sealed record AcceptanceItem(string Id, AcceptancePhase Phase, string Title, string Instruction, string Good, string Otherwise, string Source);
