namespace Proveout.Engine.Faults;

/// <summary>Checks chosen to catch every catchable fault.</summary>
/// <param name="Checks">Indices of the chosen checks, rising.</param>
/// <param name="CostSeconds">What they take with their set-ups, each check counted with all its leads moved; the order can only save.</param>
/// <param name="LowerBoundSeconds">No choice of checks takes less, counted the same way.</param>
/// <param name="Method">How they were chosen, in words.</param>
public sealed record PlanChoice(IReadOnlyList<int> Checks, double CostSeconds, double LowerBoundSeconds, string Method)
{
    /// <summary>How far the plan may be above the cheapest possible, as a fraction of its own cost; 0 when it is proved to be the cheapest.</summary>
    public double Gap => CostSeconds <= 0 ? 0 : Math.Max(0, (CostSeconds - LowerBoundSeconds) / CostSeconds);

    /// <summary>How large the choice was, and what was left of it to search.</summary>
    public CoverSize Size { get; init; } = new(0, 0, 0, 0, 0, 0, 0, 0);

    /// <summary>What is proved and how, in sentences that a builder reads.</summary>
    public string Proof => PlanProofWords.Of(this);
}
