namespace Proveout.Workshop;

/// <summary>A guess with what it is about.</summary>
/// <param name="Guess">The guess.</param>
/// <param name="Section">Section of the editor that corrects it: parts, conductors or machine.</param>
/// <param name="About">What it is about, for people.</param>
public sealed record AboutGuess(Guess Guess, string Section, string About);
