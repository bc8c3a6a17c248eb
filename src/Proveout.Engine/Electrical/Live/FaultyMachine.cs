namespace Proveout.Engine.Electrical;

/// <summary>A machine with mistakes in it, solved state by state; each state once.</summary>
internal sealed class FaultyMachine
{
    // Where a cut path carried less, or joined nodes lay closer, the sound potentials hold for the faulty machine too.
    private const double NoAmperes = 1e-6;
    private const double NoVolts = 1e-3;

    private readonly LiveModel _model;
    private readonly LiveStage? _stage;
    private readonly ChangedCircuit _changed;
    private readonly bool _nearCoil;
    private readonly Dictionary<ControlState, LiveSolution> _solved = [];

    public FaultyMachine(LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage)
    {
        (_model, _stage) = (model, stage);
        _changed = new ChangedCircuit(model.Circuit, changes, stage);
        _nearCoil = NodesOf(changes).Any(model.IsNearCoil);
    }

    /// <summary>The mistakes.</summary>
    public IReadOnlyList<ElementChange> Changes => _changed.Changes;

    /// <summary>What is still apart.</summary>
    public LiveStage? Stage => _stage;

    /// <summary>The same machine with something more wrong in it.</summary>
    public LiveSolution SolveWith(ControlState state, ElementChange further) =>
        new FaultyMachine(_model, [.. Changes, further], _stage).Solve(state);

    /// <summary>The solution of a state; the very one of the sound machine when the mistakes change nothing in it.</summary>
    public LiveSolution Solve(ControlState state)
    {
        if (!_solved.TryGetValue(state, out var solution))
            _solved[state] = solution = SolveAnew(state);
        return solution;
    }

    private LiveSolution SolveAnew(ControlState state)
    {
        var sound = _model.Sound(state, _stage);
        var remembered = state.After is { } before && Solve(before) is var earlier && !ReferenceEquals(earlier, _model.Sound(before, _stage))
            && !earlier.Point.Positions.AsSpan().SequenceEqual(_model.Sound(before, _stage).Point.Positions)
            ? earlier
            : null;
        var (direct, alternating) = Touches(sound);
        if (remembered is null && !direct && !alternating)
            return sound;
        var start = (sound.AtFirst ?? sound).Point.Copy();
        if (state.After is not null)
            (remembered ?? _model.Sound(state.After, _stage)).Point.Positions.CopyTo(start.Positions, 0);
        else if (_nearCoil && _changed.Joins.Length > 0)
            _model.Released.CopyTo(start.Positions, 0);
        return _model.Run(_changed, state, start, alternating);
    }

    // Opening what carries no current and joining what has one potential leaves every equation of the sound machine true.
    private (bool Direct, bool Alternating) Touches(LiveSolution sound)
    {
        var (direct, alternating) = (false, false);
        foreach (var change in _changed.Changes)
        {
            if (ElementOf(change) is { } element)
            {
                direct |= Math.Abs(sound.DcAmperes(element)) > NoAmperes;
                alternating |= sound.AcAmperes(element).Magnitude > NoAmperes;
            }
        }

        foreach (var (a, b, _) in _changed.Joins)
        {
            direct |= Math.Abs(sound.DcVolts(a) - sound.DcVolts(b)) > NoVolts;
            alternating |= (sound.AcVolts(a) - sound.AcVolts(b)).Magnitude > NoVolts;
        }

        return (direct, alternating);
    }

    private IEnumerable<int> NodesOf(IReadOnlyList<ElementChange> changes) => changes.SelectMany(change =>
        change is Join join
            ? new[] { join.A, join.B }
            : [_model.Circuit.Branches[ElementOf(change)!.Value].A, _model.Circuit.Branches[ElementOf(change)!.Value].B]);

    private static int? ElementOf(ElementChange change) => change switch
    {
        Cut cut => cut.Element,
        AddInSeries added => added.Element,
        Replace replace => replace.Element,
        _ => null,
    };
}
