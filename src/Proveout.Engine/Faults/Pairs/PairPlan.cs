namespace Proveout.Engine.Faults;

/// <summary>A plan that also catches every pair of faults that can hurt or destroy and that some check surely catches.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Report">What it does against every pair.</param>
public sealed record PairPlan(CheckPlan Plan, PairReport Report)
{
    /// <summary>Indices of the checks that the plan would do without if mistakes were only made alone, in the order to do them.</summary>
    public IReadOnlyList<int> AddedChecks { get; private init; } = [];

    /// <summary>Chooses a plan, evaluates all pairs on it and demands what it lacks, until it lacks nothing.</summary>
    /// <remarks>Each turn adds a demand that no plan before met, of which there are finitely many; two or three turns are usual.</remarks>
    /// <param name="dictionary">What every check shows under every fault alone.</param>
    /// <param name="interactions">What the trade knows of faults made together.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="severity">What two faults together do; by default the worse of what each does.</param>
    /// <param name="progress">Told the share of the pairs that is done, 0 to 1, anew in each turn.</param>
    /// <param name="beyondPlan">True to look among all candidates for checks that catch pairs of two faults that none catches alone; takes several times as long.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PairPlan Of(
        FaultDictionary dictionary,
        IFaultInteractions interactions,
        bool onlyGreedy = false,
        Func<int, int, Severity>? severity = null,
        IProgress<double>? progress = null,
        bool beyondPlan = true,
        CancellationToken cancellation = default)
    {
        List<int[]> demands = [];
        CheckPlan? alone = null;
        while (true)
        {
            var plan = CheckPlan.Of(dictionary, onlyGreedy, demands);
            alone ??= plan;
            var report = new PairCampaign(dictionary, plan, interactions, severity, beyondPlan: beyondPlan).Run(progress, cancellation);
            if (report.AlsoCatch is not { Count: > 0 } lacking)
                return new PairPlan(plan, report) { AddedChecks = [.. plan.Checks.Except(alone.Checks)] };
            demands.AddRange(lacking);
        }
    }
}
