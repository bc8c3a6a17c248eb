namespace Proveout.Engine.Faults;

/// <summary>Faults that together explain every reading.</summary>
/// <param name="Faults">Indices of the faults, rising; one when one is enough.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
public sealed record Hypothesis(IReadOnlyList<int> Faults, double Probability);
