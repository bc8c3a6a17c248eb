namespace Proveout.Engine.Faults;

/// <summary>What a plan does against every three of some faults.</summary>
/// <param name="Simulated">Triples whose faults can all be made together.</param>
/// <param name="Masked">Those of them that the plan does not surely catch.</param>
/// <param name="Contradictory">Triples left out because two of their faults cannot be made together.</param>
/// <param name="Examples">Some of the masked triples that hold a fault which the plan catches alone, rising.</param>
public sealed record TripleReport(long Simulated, long Masked, long Contradictory, IReadOnlyList<int[]> Examples)
{
    /// <summary>Number of triples that the plan surely catches.</summary>
    public long Caught => Simulated - Masked;
}
