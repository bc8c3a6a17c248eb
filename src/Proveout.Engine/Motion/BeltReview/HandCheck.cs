namespace Proveout.Engine.Motion;

/// <summary>A check of pulleys and idlers by hand, with its criterion.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Caution">What can hurt; shown before the rest.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="Good">What is good.</param>
/// <param name="Bad">What is not, and why.</param>
/// <param name="Source">Where the criterion is from.</param>
public sealed record HandCheck(string Title, string Caution, string Instruction, string Good, string Bad, string Source);
