namespace Proveout.Engine.Faults;

/// <summary>One or two faults that explain every reading.</summary>
/// <param name="Faults">Indices of the faults, one or two.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
public sealed record Hypothesis(IReadOnlyList<int> Faults, double Probability);
