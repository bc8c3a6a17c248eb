using System.Collections.Concurrent;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The wiring network in one state of the machine: two networks of resistors, one with every resistance at its low limit, one at its high.</summary>
/// <remarks>
/// The resistance between two nodes of a resistive network rises with every resistance in it (Rayleigh's monotonicity law; Doyle and Snell,
/// Random Walks and Electric Networks, 1.4), so these two hold the exact limits of every reading.
/// </remarks>
internal sealed class StateNetwork : IStateReadings
{
    private readonly bool[] _conducts;
    private readonly Lazy<StrayEnds> _strayEnds;
    private readonly Lazy<ElementSwitches> _switchesAtLow;
    private readonly Lazy<ElementSwitches> _switchesAtHigh;
    private readonly Lazy<ResistorNetwork> _closed;
    private readonly ConcurrentStack<JunctionWays> _idleWays = [];

    /// <summary>Makes the network of a state.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="state">Plugs and controls.</param>
    /// <param name="strays">Junctions and insulation of the wiring, where they are listed already.</param>
    public StateNetwork(WiringNetwork wiring, MachineState state, StrayPaths? strays = null)
    {
        (Wiring, State) = (wiring, state);
        StrayPaths = strays ?? new StrayPaths(wiring);
        _conducts = [.. wiring.Elements.Select(element => Conducts(wiring, state, element))];
        Low = new LimitNetwork(wiring, element => Conducts(element) ? 1 / element.LowOhms : 0);
        High = new LimitNetwork(wiring, element => Conducts(element) ? 1 / element.HighOhms : 0, Low);
        _closed = new(() => new LimitNetwork(wiring, element => ConductsWhenClosed(element) ? 1 / element.LowOhms : 0).Network);
        Strays = StrayPaths.Of(Low.Network.Islands, LeastVolts);
        _switchesAtLow = new(() => new ElementSwitches(wiring, this, atHigh: false));
        _switchesAtHigh = new(() => new ElementSwitches(wiring, this, atHigh: true));
        _strayEnds = new(() => new StrayEnds(StrayPaths, Low.Network, Strays));
    }

    /// <summary>The wiring.</summary>
    public WiringNetwork Wiring { get; }

    /// <summary>Plugs and controls.</summary>
    public MachineState State { get; }

    /// <inheritdoc/>
    public StrayPaths StrayPaths { get; }

    /// <inheritdoc/>
    public StrayPieces Strays { get; }

    /// <summary>Their ends along the search order of that network.</summary>
    public StrayEnds StrayEnds => _strayEnds.Value;

    /// <summary>Every resistance at its low limit; junctions and insulation open.</summary>
    public LimitNetwork Low { get; }

    /// <summary>Every resistance at its high limit; junctions open.</summary>
    public LimitNetwork High { get; }

    /// <summary>Changes <see cref="Low"/> by elements.</summary>
    public ElementSwitches SwitchesAtLow => _switchesAtLow.Value;

    /// <summary>Changes <see cref="High"/> by elements.</summary>
    public ElementSwitches SwitchesAtHigh => _switchesAtHigh.Value;

    /// <summary>The graph of <see cref="Low"/> with every contact closed, which holds the graphs of both limits with every control operated.</summary>
    public ResistorNetwork Closed => _closed.Value;

    /// <inheritdoc/>
    public bool Conducts(NetworkElement element) => _conducts[element.Index];

    /// <inheritdoc/>
    public double LowOhms(int a, int b) => Low.Network.Resistance(a, b);

    /// <inheritdoc/>
    public double HighOhms(int a, int b) => High.Network.Resistance(a, b);

    /// <inheritdoc/>
    public int PieceOf(int node) => Low.Network.Islands.Of(node);

    /// <summary>True when the element carries current in a state.</summary>
    public static bool Conducts(WiringNetwork wiring, MachineState state, NetworkElement element) => element switch
    {
        { Kind: ElementKind.Mating } => !IsApart(wiring, state, element),
        { Part: Contact contact } => contact.ClosedAt.Contains(PositionOf(wiring, state, element.Subject, contact.Control), StringComparer.Ordinal),
        _ => true,
    };

    /// <summary>Limits of the resistance between two nodes in ohms, whatever junctions and insulation do; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int a, int b) =>
        (Strays.LowerLimit(LowOhms(a, b), PieceOf(a), PieceOf(b)), HighOhms(a, b));

    private bool ConductsWhenClosed(NetworkElement element) => element.Part is Contact || Conducts(element);

    private double LeastVolts(int red, int black)
    {
        var ways = _idleWays.TryPop(out var idle) ? idle : new JunctionWays(StrayEnds);
        var volts = ways.LeastVolts(null, red, black);
        _idleWays.Push(ways);
        return volts;
    }

    private static bool IsApart(WiringNetwork wiring, MachineState state, NetworkElement mating) =>
        state.PlugsApart
        || (state.AnyPulled && state.IsPulled(mating.Subject, wiring.Design.FindPart(mating.Subject)!.Type.ConnectorOf(mating.Name)!.Name));

    private static string PositionOf(WiringNetwork wiring, MachineState state, string part, string control) =>
        state.PositionOf(part, control) ?? wiring.Design.FindPart(part)!.Type.Controls.First(candidate => candidate.Name == control).Rest;
}
