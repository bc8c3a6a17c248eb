using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Computes every symptom and every live reading for every fault.</summary>
/// <remarks>Each fault is solved once in each state, at both ends of its own tolerance where that matters; all checks of the state read from it.</remarks>
public sealed class SymptomCampaign
{
    private readonly LiveModel _model;
    private readonly IReadOnlyList<WiringFault> _faults;
    private readonly (LiveStage? Stage, ControlState State, (int Check, LiveObservation Observation)[] Seen)[] _groups;

    /// <summary>Makes the checks.</summary>
    /// <param name="model">The machine.</param>
    /// <param name="faults">The mistakes, in the order of the dictionary that is to be extended.</param>
    /// <param name="wanted">Which checks are wanted; null for all. States that no wanted check needs are not solved.</param>
    public SymptomCampaign(LiveModel model, IReadOnlyList<WiringFault> faults, Func<Check, bool>? wanted = null)
    {
        (_model, _faults) = (model, faults);
        var checks = new LiveChecks(model);
        LiveObservation[] found = [.. LiveCheckRules.Symptoms.Concat(LiveCheckRules.Readings).SelectMany(rule => rule.Generate(checks)).Where(item => wanted?.Invoke(item.Check) ?? true)];
        var setUps = found
            .GroupBy(item => item.Check.SetUp)
            .Select(group => (First: group.First(), Checks: group.ToArray()))
            .OrderBy(item => Symptom.Is(item.First.Check))
            .ThenBy(item => item.First.Stage is null)
            .ThenBy(item => model.States.Index().First(state => state.Item == item.First.State).Index)
            .ToArray();
        SetUps =
        [
            .. setUps.Select(item => LiveSetUps.Of(
                model.Context.Design,
                Symptom.Is(item.First.Check) ? Phase.InUse : Phase.Live,
                item.First.Stage,
                item.First.State)),
        ];
        LiveObservation[] ordered = [.. setUps.SelectMany(item => item.Checks)];
        Checks = [.. ordered.Select(item => item.Check)];
        _groups =
        [
            .. ordered
                .Select((observation, index) => (Check: index, Observation: observation))
                .GroupBy(item => (item.Observation.Stage, item.Observation.State))
                .Select(group => (group.Key.Stage, group.Key.State, group.ToArray())),
        ];
    }

    /// <summary>The states in which the checks are done; none is dead.</summary>
    public IReadOnlyList<SetUp> SetUps { get; }

    /// <summary>The symptoms and the live readings, set-up by set-up.</summary>
    public IReadOnlyList<Check> Checks { get; }

    /// <summary>Computes what each fault changes, on all processors; for <see cref="FaultDictionary.Extended"/>.</summary>
    public FaultResponse[] Run(CancellationToken cancellation = default)
    {
        var responses = new FaultResponse[_faults.Count];
        Parallel.For(0, _faults.Count, new ParallelOptions { CancellationToken = cancellation }, fault => responses[fault] = Respond(_faults[fault].Changes));
        return responses;
    }

    /// <summary>What some changes of the wiring alter: those of one fault, or of several made at once.</summary>
    /// <param name="changes">The changes; each element at most once.</param>
    public FaultResponse Respond(IReadOnlyList<ElementChange> changes)
    {
        var variants = FaultVariants.Of(changes);
        var shown = new SortedDictionary<int, ReadingInterval>();
        foreach (var stage in _groups.GroupBy(group => group.Stage))
        {
            FaultyMachine[] machines = InvertedContacts.AreIn(changes) ? [] : [.. variants.Select(variant => new FaultyMachine(_model, variant, stage.Key))];
            foreach (var (_, state, seen) in stage)
            {
                var sound = _model.Sound(state, stage.Key);
                var solutions = machines.Length > 0
                    ? machines.Select(machine => machine.Solve(state))
                    : variants.Select(variant => _model.Solve(state, InvertedContacts.In(variant, sound, _model.Context.Wiring), stage.Key));
                LiveView?[] views = [.. solutions.Select(solution => ReferenceEquals(solution, sound) ? null : new LiveView(solution))];
                if (Array.Exists(views, view => view is not null))
                    Compare(seen, views, shown);
            }
        }

        return new FaultResponse([.. shown.Keys], [.. shown.Values]);
    }

    private static void Compare((int Check, LiveObservation Observation)[] seen, LiveView?[] views, SortedDictionary<int, ReadingInterval> shown)
    {
        foreach (var (check, observation) in seen)
        {
            ReadingInterval? all = null;
            foreach (var view in views)
            {
                var one = view is null ? observation.Check.Expectation : observation.Show(view);
                all = all is { } before ? before.Hull(one) : one;
            }

            if (all is { } interval && Differs(interval, observation.Check.Expectation))
                shown[check] = interval;
        }
    }

    // Less than a fiftieth of the interval is no difference: it lies within the margins that were chosen.
    private static bool Differs(ReadingInterval one, ReadingInterval other)
    {
        var same = (other.High - other.Low) / 50;
        return !(Math.Abs(one.Low - other.Low) <= same && Math.Abs(one.High - other.High) <= same);
    }
}
