namespace Proveout.Engine.Electrical;

/// <summary>A machine with mistakes in it, solved state by state; each state once.</summary>
internal sealed class FaultyMachine
{
    // Where a cut path carried less, or joined nodes lay closer, the sound potentials hold for the faulty machine too.
    private const double NoAmperes = 1e-6;
    private const double NoVolts = 1e-3;

    // Volts or amperes, and share, within which two sound states count as alike where mistakes touch them.
    private const double AlikeAmperes = 2e-5;
    private const double AlikeVolts = 5e-3;
    private const double AlikeShare = 0.02;

    private readonly LiveModel _model;
    private readonly LiveStage? _stage;
    private readonly ChangedCircuit _changed;
    private readonly bool _nearCoil;
    private readonly Dictionary<ControlState, LiveSolution> _solved = [];
    private MetalPieces? _pieces;

    public FaultyMachine(LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage)
    {
        (_model, _stage) = (model, stage);
        _changed = new ChangedCircuit(model.Circuit, changes, stage);
        _nearCoil = changes.SelectMany(change => NodesOf(model.Circuit, change)).Any(model.IsNearCoil);
    }

    /// <summary>The mistakes.</summary>
    public IReadOnlyList<ElementChange> Changes => _changed.Changes;

    /// <summary>What is still apart.</summary>
    public LiveStage? Stage => _stage;

    /// <summary>A node that stands for all that are one metal with a node, whatever anybody switches and whatever interrupts.</summary>
    public int MetalOf(int node) => (_pieces ??= new(_changed, _model.Circuit.IsLasting)).Of(node);

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

    /// <summary>
    /// True when, in the sound machine, what the mistakes touch carries and lies at the same in both states: then they do in the one what they do in
    /// the other, but for what an output that they do not touch sees of a supply that sags, and that shows with all outputs on.
    /// </summary>
    public bool TouchesAlike(ControlState one, ControlState other)
    {
        var (first, second) = (_model.Sound(one, _stage), _model.Sound(other, _stage));
        foreach (var change in _changed.Changes)
            if (change is Invert || (change.ChangedElement is { } element
                && !(IsNear(first.DcAmperes(element), second.DcAmperes(element), AlikeAmperes)
                    && IsNear(first.AcAmperes(element).Magnitude, second.AcAmperes(element).Magnitude, AlikeAmperes))))
                return false;
        foreach (var (a, b, _) in _changed.Joins)
            if (!(IsNear(first.DcVolts(a) - first.DcVolts(b), second.DcVolts(a) - second.DcVolts(b), AlikeVolts)
                && IsNear((first.AcVolts(a) - first.AcVolts(b)).Magnitude, (second.AcVolts(a) - second.AcVolts(b)).Magnitude, AlikeVolts)))
                return false;
        return true;
    }

    private static bool IsNear(double one, double other, double absolute) => Math.Abs(one - other) <= absolute + (AlikeShare * Math.Abs(one));

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
            if (change.ChangedElement is { } element)
            {
                direct |= Math.Abs(sound.DcAmperes(element)) > NoAmperes;
                alternating |= sound.AcAmperes(element).Magnitude > NoAmperes;
                // A contact of the other sense closes what was open too.
                if (change is Invert)
                {
                    var branch = _model.Circuit.Branches[element];
                    direct |= Math.Abs(sound.DcVolts(branch.A) - sound.DcVolts(branch.B)) > NoVolts;
                    alternating |= (sound.AcVolts(branch.A) - sound.AcVolts(branch.B)).Magnitude > NoVolts;
                }
            }
        }

        foreach (var (a, b, _) in _changed.Joins)
        {
            direct |= Math.Abs(sound.DcVolts(a) - sound.DcVolts(b)) > NoVolts;
            alternating |= (sound.AcVolts(a) - sound.AcVolts(b)).Magnitude > NoVolts;
        }

        return (direct, alternating);
    }

    // Branches of the live circuit go on where the elements of the wiring end.
    private static IEnumerable<int> NodesOf(LiveCircuit circuit, ElementChange change) => change.ChangedElement is { } branch
        ? [circuit.Branches[branch].A, circuit.Branches[branch].B]
        : change.NodesIn(circuit.Context.Wiring);
}
