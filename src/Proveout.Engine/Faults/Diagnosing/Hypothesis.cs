namespace Proveout.Engine.Faults;

/// <summary>Faults that together explain the readings, but for those that are set aside.</summary>
/// <param name="Faults">Indices of the faults, rising; one when one is enough; none when only a wrong reading is supposed.</param>
/// <param name="Probability">Its probability after the readings, 0 to 1.</param>
/// <param name="SetAside">Identifiers of the checks whose readings are set aside as misread, or whose symptoms as falsely reported.</param>
public sealed record Hypothesis(IReadOnlyList<int> Faults, double Probability, IReadOnlyList<string> SetAside);
