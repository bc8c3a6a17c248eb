using System.Collections.Concurrent;

namespace Proveout.Engine.Electrical;

/// <summary>The machine while it is energised: what every state of its controls, with and without mistakes, does to potentials and currents.</summary>
/// <remarks>Safe for several threads at once.</remarks>
public sealed class LiveModel
{
    private readonly ConcurrentDictionary<(LiveStage? Stage, ControlState State), Lazy<LiveSolution>> _sound = [];
    private readonly ConcurrentStack<LiveSolver> _solvers = [];
    private readonly bool[] _nearCoil;

    /// <summary>Makes the model.</summary>
    /// <param name="context">The wiring.</param>
    /// <param name="mains">The mains before the machine; null for what the machine file says, with usual impedances.</param>
    public LiveModel(WiringContext context, MainsSource? mains = null)
    {
        Context = context;
        Mains = context.Design.Mains is { } stated ? mains ?? MainsSource.Of(stated) : null;
        Circuit = LiveCircuitBuilder.Build(context, Mains);
        States = ControlStates.Of(context.Design);
        Released = new LivePoint(Circuit).Positions;
        _nearCoil = NearCoil(context, Circuit);
    }

    /// <summary>The wiring.</summary>
    public WiringContext Context { get; }

    /// <summary>The mains before the machine; null when none enters it.</summary>
    public MainsSource? Mains { get; }

    /// <summary>The states in which the machine is looked at, in the order in which a person meets them.</summary>
    public IReadOnlyList<ControlState> States { get; }

    internal LiveCircuit Circuit { get; }

    /// <summary>Every control at rest.</summary>
    internal int[] Released { get; }

    /// <summary>True when a node belongs to a part with a coil, or to a conductor that lands on one: a mistake there may change what holds itself.</summary>
    internal bool IsNearCoil(int node) => node >= 0 && node < _nearCoil.Length && _nearCoil[node];

    /// <summary>Solves one state.</summary>
    /// <param name="state">The state of the controls.</param>
    /// <param name="changes">The mistakes; none for the sound machine.</param>
    /// <param name="stage">What is still apart; null when nothing is.</param>
    /// <returns>The solution; the very one of the sound machine when the mistakes change nothing in this state.</returns>
    public LiveSolution Solve(ControlState state, IReadOnlyList<ElementChange> changes, LiveStage? stage = null) =>
        changes.Count == 0 ? Sound(state, stage) : new FaultyMachine(this, changes, stage).Solve(state);

    /// <summary>Solves one state of the sound machine.</summary>
    public LiveSolution Sound(ControlState state, LiveStage? stage = null) =>
        _sound.GetOrAdd((stage, state), key => new(() => SolveSound(key.Stage, key.State))).Value;

    internal LiveSolution Run(ChangedCircuit changed, ControlState state, LivePoint start, bool mainsStale)
    {
        if (!_solvers.TryPop(out var solver))
            solver = new LiveSolver(Circuit);
        var solution = solver.Solve(changed, state, start, mainsStale);
        _solvers.Push(solver);
        return solution;
    }

    private LiveSolution SolveSound(LiveStage? stage, ControlState state)
    {
        var start = new LivePoint(Circuit);
        if (state.After is { } before)
            Sound(before, stage).Point.Positions.CopyTo(start.Positions, 0);
        return Run(new ChangedCircuit(Circuit, [], stage), state, start, mainsStale: true);
    }

    private static bool[] NearCoil(WiringContext context, LiveCircuit circuit)
    {
        var parts = circuit.Drives.Select(drive => circuit.Controls[drive.Control].Part).ToHashSet(StringComparer.Ordinal);
        var conductors = context.Design.Conductors
            .Where(conductor => parts.Contains(conductor.From.Part) || parts.Contains(conductor.To.Part))
            .Select(conductor => conductor.Id)
            .ToHashSet(StringComparer.Ordinal);
        return [.. context.Wiring.Nodes.Select(node => node.Kind == NodeKind.ConductorEnd ? conductors.Contains(node.Subject) : parts.Contains(node.Subject))];
    }
}
