namespace Proveout.Workshop;

/// <summary>A terminal of a part in a table.</summary>
/// <param name="Name">Its name, as marked on the part.</param>
/// <param name="Reference">Part and terminal, such as <c>A1.OUT0+</c>.</param>
/// <param name="Carries">What it carries.</param>
/// <param name="Bears">What voltage and current it bears; empty when the part type does not say.</param>
/// <param name="Conductors">Identifiers of what is wired to it, in the order of the files.</param>
public sealed record TerminalRow(string Name, string Reference, string Carries, string Bears, IReadOnlyList<string> Conductors);
