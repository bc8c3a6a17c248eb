using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The wiring network in one state of the machine: two networks of resistors, one with every resistance at its low limit, one at its high.</summary>
/// <remarks>
/// The resistance between two nodes of a resistive network rises with every resistance in it (Rayleigh's monotonicity law; Doyle and Snell,
/// Random Walks and Electric Networks, 1.4), so these two hold the exact limits of every reading.
/// </remarks>
internal sealed class StateNetwork
{
    private readonly WiringNetwork _wiring;

    private readonly JunctionGroups _groups;

    public StateNetwork(WiringNetwork wiring, MachineState state)
    {
        _wiring = wiring;
        State = state;
        Junctions = new Junctions(wiring);
        Low = new LimitNetwork(wiring, element => Conducts(element) ? 1 / element.LowOhms : 0);
        High = new LimitNetwork(wiring, element => Conducts(element) ? 1 / element.HighOhms : 0);
        _groups = Junctions.Groups(Low.Network.Islands.Count, Low.Network.Islands.Of);
    }

    public MachineState State { get; }

    /// <summary>The junctions, and what they may do to a reading.</summary>
    public Junctions Junctions { get; }

    /// <summary>Every resistance at its low limit; junctions open.</summary>
    public LimitNetwork Low { get; }

    /// <summary>Every resistance at its high limit; junctions open.</summary>
    public LimitNetwork High { get; }

    /// <summary>True when the element carries current in this state.</summary>
    public bool Conducts(NetworkElement element) => Conducts(_wiring, State, element);

    /// <summary>True when the element carries current in a state.</summary>
    public static bool Conducts(WiringNetwork wiring, MachineState state, NetworkElement element) => element switch
    {
        { Kind: ElementKind.Mating } => !state.PlugsApart,
        { Part: Contact contact } => contact.ClosedAt.Contains(PositionOf(wiring, state, element.Subject, contact.Control), StringComparer.Ordinal),
        _ => true,
    };

    /// <summary>Limits of the resistance between two nodes in ohms, whatever the junctions do; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int a, int b) =>
        (Junctions.Floor(Low.Network.Resistance(a, b), a, b, _groups), High.Network.Resistance(a, b));

    private static string PositionOf(WiringNetwork wiring, MachineState state, string part, string control) =>
        state.PositionOf(part, control) ?? wiring.Design.FindPart(part)!.Type.Controls.First(candidate => candidate.Name == control).Rest;
}
