namespace Proveout.Workshop;

/// <summary>Mistakes that are caught, but that no check considered tells apart (an ambiguity group).</summary>
/// <param name="Sentences">Each of them in a sentence.</param>
public sealed record AmbiguousFaults(IReadOnlyList<string> Sentences);
