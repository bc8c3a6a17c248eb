namespace Proveout.Workshop;

/// <summary>What a person brings to learn what the first test piece says.</summary>
/// <param name="Typed">Figures by the names of <see cref="PieceFields"/>, numbered measures among them, and how it was made by <see cref="PieceWays.Name"/>.</param>
/// <param name="Readings">A table with <c>measure</c> and <c>reading</c>; null without.</param>
public sealed record PieceRequest(IReadOnlyDictionary<string, string> Typed, NamedText? Readings);
