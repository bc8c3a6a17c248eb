namespace Proveout.Engine.Faults;

/// <summary>Faults that together explain the evidence, before all explanations are weighed against each other.</summary>
/// <param name="Faults">Indices of the faults, rising; none for the sound machine.</param>
/// <param name="LogWeight">Natural logarithm of prior odds times likelihood.</param>
/// <param name="Aside">Indices of the checks whose readings are set aside.</param>
internal sealed record Explanation(int[] Faults, double LogWeight, IReadOnlyList<int> Aside);
