namespace Proveout.Engine.Faults;

/// <summary>The checks to do, in order, and what they leave.</summary>
/// <param name="Checks">Indices of the checks in the dictionary, in the order to do them.</param>
/// <param name="Choice">How they were chosen.</param>
/// <param name="Caught">Faults that the plan surely catches, by index, rising.</param>
/// <param name="Uncaught">Faults that it does not surely catch, by index, rising.</param>
public sealed record CheckPlan(IReadOnlyList<int> Checks, PlanChoice Choice, IReadOnlyList<int> Caught, IReadOnlyList<int> Uncaught)
{
    /// <summary>Makes the plan of a dictionary: chosen by <see cref="Planner"/>, ordered by set-up, then by the worst that a check would catch.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="alsoCatch">Further demands: of each, at least one of the checks with these indices must be in the plan.</param>
    /// <param name="mayUse">Which checks may be chosen, by index; all when null.</param>
    /// <exception cref="ArgumentException">A further demand names no check that may be chosen.</exception>
    public static CheckPlan Of(
        FaultDictionary dictionary, bool onlyGreedy = false, IReadOnlyList<int[]>? alsoCatch = null, Func<int, bool>? mayUse = null)
    {
        var choice = Planner.Choose(dictionary, onlyGreedy, alsoCatch, mayUse);
        var chosen = choice.Checks.ToHashSet();
        var worst = chosen.ToDictionary(check => check, _ => Severity.Hidden);
        var count = chosen.ToDictionary(check => check, _ => 0);
        List<int> caught = [];
        List<int> uncaught = [];
        for (var fault = 0; fault < dictionary.Faults.Count; fault++)
        {
            var catching = dictionary.ChecksThatCatch(fault).ToArray();
            (catching.Any(chosen.Contains) ? caught : uncaught).Add(fault);
            foreach (var check in catching.Where(chosen.Contains))
            {
                worst[check] = (Severity)Math.Max((int)worst[check], (int)dictionary.Faults[fault].Severity);
                count[check]++;
            }
        }

        var setUpOrder = dictionary.SetUps.Select((setUp, index) => (setUp.Id, index)).ToDictionary(item => item.Id, item => item.index);
        int[] ordered =
        [
            .. chosen
                .OrderBy(check => setUpOrder[dictionary.Checks[check].SetUp])
                .ThenByDescending(check => worst[check])
                .ThenByDescending(check => count[check])
                .ThenBy(check => check),
        ];
        return new CheckPlan(ordered, choice, caught, uncaught);
    }
}
