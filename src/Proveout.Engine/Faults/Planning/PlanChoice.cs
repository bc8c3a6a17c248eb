namespace Proveout.Engine.Faults;

/// <summary>Checks chosen to catch every catchable fault.</summary>
/// <param name="Checks">Indices of the chosen checks, rising.</param>
/// <param name="CostSeconds">What they take with their set-ups.</param>
/// <param name="LowerBoundSeconds">No plan takes less than this.</param>
/// <param name="Method">How they were chosen, in words.</param>
public sealed record PlanChoice(IReadOnlyList<int> Checks, double CostSeconds, double LowerBoundSeconds, string Method)
{
    /// <summary>How far the plan may be above the cheapest possible, as a fraction of its own cost; 0 when it is proved to be the cheapest.</summary>
    public double Gap => CostSeconds <= 0 ? 0 : Math.Max(0, (CostSeconds - LowerBoundSeconds) / CostSeconds);
}
