namespace Proveout.Workshop;

/// <summary>What in a machine nobody said.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="CanEdit">False for a machine that came with the program.</param>
/// <param name="Guesses">Its guesses, in file order.</param>
public sealed record GuessesView(MachineSummary Machine, bool CanEdit, IReadOnlyList<AboutGuess> Guesses);
