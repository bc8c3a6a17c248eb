using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Something about the path of a belt that cannot be right, or is not good practice.</summary>
/// <param name="Rule">Identifier of the rule.</param>
/// <param name="Subjects">Belts and pulleys concerned.</param>
/// <param name="Sentence">What is the matter.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Source">Where the rule is from.</param>
public sealed record BeltFinding(string Rule, ValueList<string> Subjects, string Sentence, string Mend, string Source);
