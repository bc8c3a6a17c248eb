namespace Proveout.Engine.Faults;

/// <summary>Checks in the order to do them, so that leads and meter change as little as the order of importance allows.</summary>
/// <remarks>
/// Set-ups keep their order, the one that stands first. Within one, checks that would catch shock come first, then fire, damage and the rest
/// (<see cref="Severity"/>); what strains the machine (<see cref="Check.DoLast"/>) comes after all of them. Within such a class the order is free,
/// and it is chosen for the least lead moves and meter changes.
/// </remarks>
/// <param name="Steps">The checks, with what changes for each.</param>
/// <param name="Time">What they take.</param>
/// <param name="LowerBoundSeconds">No order of the same checks, set-ups and classes kept, takes less.</param>
public sealed record BenchOrder(IReadOnlyList<OrderStep> Steps, BenchTime Time, double LowerBoundSeconds)
{
    /// <summary>How far the order may be above the best one, as a fraction of its own time; 0 when it is proved to be the best.</summary>
    public double Gap => Time.Seconds <= 0 ? 0 : Math.Max(0, (Time.Seconds - LowerBoundSeconds) / Time.Seconds);

    /// <summary>What the checks take in this order, split by what takes it, in sentences.</summary>
    public string Words => BenchOrderWords.Of(this);

    /// <summary>Orders checks.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="checks">Indices of the checks to do.</param>
    /// <param name="from">How the bench stands; empty when null.</param>
    /// <param name="costs">What changes cost; by hand when null.</param>
    public static BenchOrder Of(FaultDictionary dictionary, IEnumerable<int> checks, LeadPlacement? from = null, BenchCosts? costs = null)
    {
        int[] wanted = [.. checks];
        var catches = PlanCatches.Of(dictionary, wanted);
        return Of(dictionary, wanted.Distinct().ToDictionary(check => check, check => catches.Worst[check]), from, costs);
    }

    /// <summary>Orders what is left of a plan from where the leads are now.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="done">Identifiers of the checks that are done.</param>
    /// <param name="now">How the bench stands.</param>
    /// <param name="costs">What changes cost; by hand when null.</param>
    public static BenchOrder Next(FaultDictionary dictionary, CheckPlan plan, IReadOnlySet<string> done, LeadPlacement now, BenchCosts? costs = null) => Of(
        dictionary,
        plan.Checks
            .Zip(plan.WorstCaught, (check, worst) => (Check: check, Worst: worst))
            .Where(item => !done.Contains(dictionary.Checks[item.Check].Id))
            .ToDictionary(item => item.Check, item => item.Worst),
        now,
        costs);

    /// <summary>Orders checks of which the worst that each would catch is known.</summary>
    internal static BenchOrder Of(FaultDictionary dictionary, Dictionary<int, Severity> worst, LeadPlacement? from, BenchCosts? costs)
    {
        var price = costs ?? BenchCosts.ByHand;
        var state = from ?? LeadPlacement.Empty;
        int[] checks = [.. worst.Keys.Order()];
        var search = new OrderSearch([.. checks.Select(check => dictionary.Checks[check])], price, state);
        foreach (var setUp in SetUpsInOrder(dictionary, checks, state))
        {
            if (setUp.Key != state.SetUp)
                search.PutLeadsDown();
            foreach (var group in setUp.GroupBy(ClassOf).OrderBy(group => group.Key.IsLast).ThenByDescending(group => group.Key.Worst))
                search.Through([.. group]);
        }

        var steps = StepsAlong(dictionary, checks, search.Stops, state);
        var time = BenchTime.Of(dictionary, steps, price);
        return new BenchOrder(steps, time, time.SetUpSeconds + time.ReadingSeconds + (search.LowerUnits / CoverProblem.UnitsASecond));

        (bool IsLast, Severity Worst) ClassOf(int place) => (dictionary.Checks[checks[place]].DoLast, worst[checks[place]]);
    }

    private static IEnumerable<IGrouping<string, int>> SetUpsInOrder(FaultDictionary dictionary, int[] checks, LeadPlacement state)
    {
        var order = dictionary.SetUps.Index().ToDictionary(item => item.Item.Id, item => item.Index, StringComparer.Ordinal);
        return Enumerable.Range(0, checks.Length)
            .GroupBy(place => dictionary.Checks[checks[place]].SetUp)
            .OrderByDescending(group => group.Key == state.SetUp)
            .ThenBy(group => order[group.Key]);
    }

    private static List<OrderStep> StepsAlong(FaultDictionary dictionary, int[] checks, IReadOnlyList<int> stops, LeadPlacement state)
    {
        List<OrderStep> steps = [];
        foreach (var stop in stops)
        {
            var (index, swapped) = (checks[stop / 2], stop % 2 == 1);
            steps.Add(OrderStep.From(state, index, dictionary.Checks[index], swapped));
            state = state.After(dictionary.Checks[index], swapped);
        }

        return steps;
    }
}
