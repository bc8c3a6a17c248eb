using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>The checks of a build in the order to do them, and how the bench stands now.</summary>
/// <remarks>As long as every check was read in the order of the plan, the plan goes on; else what is left of it is ordered anew from where the leads are.</remarks>
internal sealed class BenchRoute
{
    private readonly FaultDictionary _dictionary;
    private readonly Dictionary<int, OrderStep> _ahead;

    private BenchRoute(FaultDictionary dictionary, IEnumerable<int> done, LeadPlacement now, IReadOnlyCollection<OrderStep> ahead)
    {
        (_dictionary, Now, _ahead) = (dictionary, now, ahead.ToDictionary(step => step.Check));
        Order = [.. done.Concat(ahead.Select(step => step.Check)).Select(check => dictionary.Checks[check].Id)];
    }

    /// <summary>Identifiers of the checks: first those dealt with, in the order in which that was done.</summary>
    public IReadOnlyList<string> Order { get; }

    /// <summary>How the bench stands.</summary>
    public LeadPlacement Now { get; }

    /// <summary>The route of a build.</summary>
    /// <param name="planned">The machine.</param>
    /// <param name="plan">Indices of the checks of the build's plan.</param>
    /// <param name="done">Indices of the checks dealt with, in the order in which each was first.</param>
    /// <param name="read">Indices of the checks read, each once, the one read last at the end.</param>
    public static BenchRoute Of(PlannedMachine planned, IReadOnlyList<int> plan, IReadOnlyList<int> done, IReadOnlyList<int> read)
    {
        var dictionary = planned.Dictionary;
        var isPlan = plan.SequenceEqual(planned.Plan.Checks);
        var steps = planned.Plan.Order.Steps;
        var now = LeadPlacement.Empty;
        for (var place = 0; place < read.Count; place++)
        {
            var check = dictionary.Checks[read[place]];
            var step = isPlan && place < steps.Count && steps[place].Check == read[place] ? steps[place] : OrderStep.From(now, read[place], check);
            now = now.After(check, step.Swapped);
        }

        var isOnPlan = isPlan && done.SequenceEqual(plan.Take(done.Count)) && read.SequenceEqual(done);
        return new BenchRoute(dictionary, done, now, isOnPlan ? [.. steps.Skip(done.Count)] : Rest(planned, isPlan, plan, done, now));
    }

    /// <summary>What changes for a check when it comes next.</summary>
    public OrderStep StepTo(int check) =>
        _ahead.GetValueOrDefault(check) is { } step && Order.FirstOrDefault(IsAhead) == _dictionary.Checks[check].Id
            ? step
            : OrderStep.From(Now, check, _dictionary.Checks[check]);

    private bool IsAhead(string check) => _ahead.ContainsKey(_dictionary.IndexOfCheck(check)!.Value);

    private static IReadOnlyList<OrderStep> Rest(PlannedMachine planned, bool isPlan, IReadOnlyList<int> plan, IReadOnlyList<int> done, LeadPlacement now) => isPlan
        ? BenchOrder.Next(planned.Dictionary, planned.Plan, done.Select(check => planned.Dictionary.Checks[check].Id).ToHashSet(StringComparer.Ordinal), now).Steps
        : BenchOrder.Of(planned.Dictionary, plan.Except(done), now).Steps;
}
