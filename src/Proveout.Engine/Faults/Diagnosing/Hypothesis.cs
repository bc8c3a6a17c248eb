namespace Proveout.Engine.Faults;

/// <summary>Faults that together explain every reading, but for one that may be set aside as misread.</summary>
/// <param name="Faults">Indices of the faults, rising; one when one is enough; none when only a misreading is supposed.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
/// <param name="SetAside">Identifier of the check whose reading is set aside as misread; null when none is.</param>
public sealed record Hypothesis(IReadOnlyList<int> Faults, double Probability, string? SetAside = null);
