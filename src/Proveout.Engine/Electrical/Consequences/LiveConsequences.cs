using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What mistakes do when the machine is energised, computed state by state.</summary>
/// <remarks>Safe for several threads at once.</remarks>
public sealed class LiveConsequences
{
    private static readonly ILiveRule[] Rules =
    [
        new TouchVoltages(),
        new PortVoltage(),
        new LiveWhenOff(),
        new ConductorHeat(),
        new LoadPower(),
        new Bypasses(),
        new OutputCurrent(),
        new Interruptions(),
        new ProtectiveCurrents(),
        new MotorWindings(),
        new Signals(),
    ];

    private readonly LiveModel _model;
    private readonly LiveSights _sights;
    private readonly WrongConnections _connections;
    private readonly ControlState _idle;

    /// <summary>Makes it for a model.</summary>
    public LiveConsequences(LiveModel model)
    {
        (_model, _sights, _connections) = (model, new LiveSights(model), new WrongConnections(model));
        _idle = model.States.First(state => state.Kind == ControlStateKind.Idle);
    }

    /// <summary>The circuit stays as it is.</summary>
    public static Consequence Nothing { get; } = new(Severity.Hidden, "The circuit stays the same; only the record is wrong.");

    /// <summary>Everything that is wrong in any state, the worst first; empty when the circuit stays as it is.</summary>
    /// <param name="changes">The mistakes.</param>
    /// <param name="stage">What is still apart; null when nothing is.</param>
    public IReadOnlyList<LiveFinding> FindingsOf(IReadOnlyList<ElementChange> changes, LiveStage? stage = null) =>
        [.. Find(changes, stage, enough: null).OrderByDescending(finding => finding.Severity)];

    /// <summary>The first of <see cref="FindingsOf"/>, found sooner; null when there is none.</summary>
    /// <param name="changes">The mistakes.</param>
    /// <param name="stage">What is still apart; null when nothing is.</param>
    public LiveFinding? WorstOf(IReadOnlyList<ElementChange> changes, LiveStage? stage = null) =>
        Find(changes, stage, enough: Severity.Shock).MaxBy(finding => finding.Severity);

    /// <summary>True when the worst of <see cref="FindingsOf"/> is as bad as that or worse, found sooner still.</summary>
    /// <param name="changes">The mistakes.</param>
    /// <param name="least">The severity.</param>
    /// <param name="stage">What is still apart; null when nothing is.</param>
    public bool IsAsBadAs(IReadOnlyList<ElementChange> changes, Severity least, LiveStage? stage = null) =>
        Find(changes, stage, enough: least).Exists(finding => finding.Severity >= least);

    /// <summary>The worst that mistakes do.</summary>
    public Consequence Of(IReadOnlyList<ElementChange> changes, LiveStage? stage = null) =>
        WorstOf(changes, stage) is { } worst ? new(worst.Severity, worst.Sentence) : OfNoFinding(changes);

    // Once something as bad as enough is found nothing further is looked for; until then, what cannot be worse than what is found is not. Of several as
    // bad the first found stands. Everything is looked for when no severity is enough.
    private List<LiveFinding> Find(IReadOnlyList<ElementChange> changes, LiveStage? stage, Severity? enough)
    {
        var findings = new List<LiveFinding>();
        var machine = new FaultyMachine(_model, changes, stage);
        foreach (var state in stage?.States ?? _model.States)
        {
            if (state.Kind is ControlStateKind.OneOutput or ControlStateKind.Sensing && machine.TouchesAlike(state, state.After ?? _idle))
                continue;
            var (sound, faulty) = (_model.Sound(state, stage), machine.Solve(state));
            if (ReferenceEquals(sound, faulty))
                continue;
            var look = new LiveLook(_model, _sights, machine, sound, faulty, findings);
            foreach (var rule in Rules)
                if (enough is null || !IsFound(rule.Worst))
                    rule.Look(look);
            if (enough is { } severity && IsFound(severity))
                return findings;
        }

        MissingProtection.Look(_model, _sights, changes, stage, findings);
        if (findings.Count == 0 && stage is null && _connections.Find(changes, _model.States[^1]) is { } wrong)
            findings.Add(wrong);
        return findings;

        bool IsFound(Severity least) => findings.Exists(finding => finding.Severity >= least);
    }

    private static Consequence OfNoFinding(IReadOnlyList<ElementChange> changes) =>
        changes.Any(change => change is AddInSeries) ? new(Severity.Hidden, "Nothing shows as long as the joint gets no worse.")
        : changes.All(change => change is Cut) && changes.Count > 0 ? new(Severity.Hidden, "Nothing shows: another path carries the current, or nothing hangs on it.")
        : Nothing;

    /// <summary>The worst that each of many faults does, in their order; those that are electrically the same are simulated once.</summary>
    public Consequence[] OfAll(IReadOnlyList<WiringFault> faults, CancellationToken cancellation)
    {
        var consequences = new Consequence[faults.Count];
        var first = SeriesIn(_model).FirstAlike(faults);
        int[] different = [.. Enumerable.Range(0, faults.Count).Where(at => first[at] == at)];
        Parallel.ForEach(different, new ParallelOptions { CancellationToken = cancellation }, at => consequences[at] = Of(faults[at].Changes));
        for (var at = 0; at < faults.Count; at++)
            consequences[at] = consequences[first[at]];
        return consequences;
    }

    /// <summary>The elements between which nothing hangs in the energised machine, and nobody touches or protects one alone.</summary>
    internal static SeriesElements SeriesIn(LiveModel model) => new(
        model.Context.Wiring,
        model.Circuit.Branches.SelectMany(branch => new[] { (branch.A, branch.Index), (branch.B, branch.Index) })
            .Where(end => end.Item1 >= 0 && end.Item1 < model.Context.Wiring.Nodes.Count),
        (node, one, two) => node.Kind is NodeKind.ConductorEnd or NodeKind.PlugContact
            && MissingProtection.IsProtective(model, one) == MissingProtection.IsProtective(model, two));
}
