namespace Proveout.Workshop;

/// <summary>Coverage of one kind of fault.</summary>
/// <param name="Kind">Kind of fault, in plain words.</param>
/// <param name="Faults">How many were simulated.</param>
/// <param name="Caught">How many the plan surely catches.</param>
public sealed record KindCoverage(string Kind, int Faults, int Caught);
