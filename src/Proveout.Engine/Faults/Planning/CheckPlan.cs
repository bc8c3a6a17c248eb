namespace Proveout.Engine.Faults;

/// <summary>The checks to do, in order, and what they leave.</summary>
/// <param name="Checks">Indices of the checks in the dictionary, in the order to do them.</param>
/// <param name="Choice">How they were chosen.</param>
/// <param name="Caught">Faults that the plan surely catches, by index, rising.</param>
/// <param name="Uncaught">Faults that it does not surely catch, by index, rising.</param>
public sealed record CheckPlan(IReadOnlyList<int> Checks, PlanChoice Choice, IReadOnlyList<int> Caught, IReadOnlyList<int> Uncaught)
{
    /// <summary>The worst that each of the checks would catch, in the same order.</summary>
    public required IReadOnlyList<Severity> WorstCaught { get; init; }

    /// <summary>The same checks with what changes for each, and what that takes.</summary>
    public required BenchOrder Order { get; init; }

    /// <summary>Makes the plan of a dictionary: chosen by <see cref="Planner"/>, ordered by <see cref="BenchOrder"/>.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="alsoCatch">Further demands: of each, at least one of the checks with these indices must be in the plan.</param>
    /// <param name="mayUse">Which checks may be chosen, by index; all when null.</param>
    /// <exception cref="ArgumentException">A further demand names no check that may be chosen.</exception>
    public static CheckPlan Of(
        FaultDictionary dictionary, bool onlyGreedy = false, IReadOnlyList<int[]>? alsoCatch = null, Func<int, bool>? mayUse = null)
    {
        var choice = Planner.Choose(dictionary, onlyGreedy, alsoCatch, mayUse);
        var catches = PlanCatches.Of(dictionary, choice.Checks);
        var order = BenchOrder.Of(dictionary, choice.Checks.ToDictionary(check => check, check => catches.Worst[check]), null, null);
        int[] checks = [.. order.Steps.Select(step => step.Check)];
        return new CheckPlan(checks, choice, catches.Caught, catches.Uncaught)
        {
            WorstCaught = [.. checks.Select(check => catches.Worst[check])],
            Order = order,
        };
    }
}
