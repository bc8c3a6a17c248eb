using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What a voltmeter shows at one probe in one state of a stage, sound and with mistakes.</summary>
internal sealed class LiveMeasurement
{
    private readonly LiveModel _model;
    private readonly LiveStage _stage;
    private readonly double _plainVolts;

    /// <summary>Measures the sound machine.</summary>
    public LiveMeasurement(LiveModel model, LiveStage stage, ControlState state, VoltageProbe probe)
    {
        (_model, _stage, State, Probe) = (model, stage, state, probe);
        _plainVolts = probe.Volts(model.Sound(state, stage));
        var metered = model.Solve(state, [probe.Meter], stage);
        IsSettled = metered.Settled;
        Expectation = LiveExpectation.Of(probe.Volts(metered), probe.IsAlternating);
    }

    /// <summary>The state of the controls.</summary>
    public ControlState State { get; }

    /// <summary>Where it is measured.</summary>
    public VoltageProbe Probe { get; }

    /// <summary>False when the sound machine has no state that agrees with itself here: then it says nothing.</summary>
    public bool IsSettled { get; }

    /// <summary>What the sound machine shows.</summary>
    public ReadingInterval Expectation { get; }

    /// <summary>True when mistakes show another reading than the sound machine can.</summary>
    /// <param name="changes">The mistakes.</param>
    /// <param name="withMistakes">The same state solved with the mistakes and without the meter.</param>
    public bool Tells(IReadOnlyList<ElementChange> changes, LiveSolution withMistakes)
    {
        var volts = Probe.Volts(withMistakes);
        if (!IsSettled || !LiveExpectation.Of(volts, Probe.IsAlternating).IsDisjointFrom(LiveExpectation.Of(_plainVolts, Probe.IsAlternating)))
            return false;
        // What floats takes another potential once the meter loads it.
        var metered = _model.Solve(State, [.. changes, Probe.Meter], _stage);
        return metered.Settled && LiveExpectation.Of(Probe.Volts(metered), Probe.IsAlternating).IsDisjointFrom(Expectation);
    }
}
