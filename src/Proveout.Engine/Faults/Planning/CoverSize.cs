namespace Proveout.Engine.Faults;

/// <summary>How large the choice of a plan's checks was, and what was left of it to search.</summary>
/// <param name="Demands">Different sets of checks of which one must be in the plan.</param>
/// <param name="Candidates">Checks that catch anything.</param>
/// <param name="DifferentChecks">Those that differ in what they catch, what they cost or where they are done.</param>
/// <param name="Decided">Checks that follow without a search.</param>
/// <param name="DemandsLeft">Demands left to the search, after those that follow from others are gone.</param>
/// <param name="ChecksLeft">Checks left to the search, after those that are never better than another are gone.</param>
/// <param name="Parts">Independent parts that the search falls into.</param>
/// <param name="PartsProved">Parts of which the solution is proved to be the cheapest.</param>
public sealed record CoverSize(
    int Demands, int Candidates, int DifferentChecks, int Decided, int DemandsLeft, int ChecksLeft, int Parts, int PartsProved);
