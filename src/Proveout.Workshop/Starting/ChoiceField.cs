namespace Proveout.Workshop;

/// <summary>A question that is answered by choosing: what it is called on a page and in a command, and what there is to choose.</summary>
/// <param name="Name">Name of the field and of the option, lower case with hyphens.</param>
/// <param name="Label">The question, for people.</param>
/// <param name="Hint">One sentence that helps; may be empty.</param>
/// <param name="Default">Answer that stands for none given.</param>
/// <param name="Choices">The answers, as stored and as shown.</param>
public sealed record ChoiceField(string Name, string Label, string Hint, string Default, IReadOnlyList<(string Answer, string Words)> Choices);
