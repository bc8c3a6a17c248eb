namespace Proveout.Engine.Motion;

/// <summary>How much material a feeder takes in for what it was told to take.</summary>
/// <param name="FedMm">What it took, with its causes.</param>
/// <param name="CommandedMm">What it was told.</param>
public sealed record FilamentFeed(UncertaintyBudget FedMm, double CommandedMm)
{
    /// <summary>Taken over told.</summary>
    public UncertaintyBudget Ratio => FedMm.Through(FedMm.Value / CommandedMm, 1 / CommandedMm);

    /// <summary>True when the feeder surely does not do what it is told; a t-test at 95 %.</summary>
    public bool IsReal => FedMm.DiffersFrom(CommandedMm);

    /// <summary>Steps for each mm that would make it so.</summary>
    /// <param name="stepsNow">Steps for each mm as set now.</param>
    public UncertaintyBudget Steps(double stepsNow)
    {
        var steps = stepsNow * CommandedMm / FedMm.Value;
        return FedMm.Through(steps, -steps / FedMm.Value);
    }

    /// <summary>From a mark on the filament, read before and after each run.</summary>
    /// <param name="runsMm">What each run took: the distance of the mark before less after.</param>
    /// <param name="commandedMm">What each run was told to take.</param>
    /// <param name="divisionMm">Division of the rule.</param>
    /// <param name="ruleErrorMm">Largest error of the rule itself over that length.</param>
    public static FilamentFeed Of(IReadOnlyList<double> runsMm, double commandedMm, double divisionMm, double ruleErrorMm)
    {
        ArgumentNullException.ThrowIfNull(runsMm);
        ReadingSeries runs = new(runsMm, divisionMm);
        // Each run is the difference of two readings, each within half a division.
        var reading = divisionMm / Math.Sqrt(6);
        var random = runs.Deviation > reading
            ? new BudgetLine("runs differ", runs.Deviation / Math.Sqrt(runsMm.Count), 1, runs.Degrees)
            : new BudgetLine("readings of the rule", reading);
        return new(new(runs.Mean, [random, new("the rule", ruleErrorMm / Math.Sqrt(3))]), commandedMm);
    }
}
