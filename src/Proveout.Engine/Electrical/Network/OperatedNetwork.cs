using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The machine as designed with one control operated, as a change of the network with all controls at rest, which is factored already. One thread's own.</summary>
internal sealed class OperatedNetwork : IStateReadings
{
    private readonly StateNetwork _rest;
    private readonly HashSet<int> _operated;
    private readonly ChangedNetwork _low;
    private readonly ChangedNetwork _high;

    /// <summary>Operates a control.</summary>
    /// <param name="rest">The network with all controls at rest.</param>
    /// <param name="operated">Elements that the control switches.</param>
    public OperatedNetwork(StateNetwork rest, IReadOnlyList<NetworkElement> operated)
    {
        _rest = rest;
        _operated = [.. operated.Select(element => element.Index)];
        _low = Changed(rest.Low.Network, rest.SwitchesAtLow, operated);
        _high = Changed(rest.High.Network, rest.SwitchesAtHigh, operated);
        Strays = _low.HasPiecesAsBefore ? rest.Strays : new ChangedStrays(rest.StrayEnds).Of(_low.Pieces);
    }

    /// <inheritdoc/>
    public StrayPieces Strays { get; }

    /// <inheritdoc/>
    public StrayPaths StrayPaths => _rest.StrayPaths;

    /// <summary>The elements that an operated control switches: its contacts that are not closed in the one position as in the other.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="rest">The network with all controls at rest.</param>
    /// <param name="setUp">The set-up; none when all its controls are at rest.</param>
    public static NetworkElement[] SwitchedBy(WiringNetwork wiring, StateNetwork rest, ElectricalSetUp setUp) => setUp.Operated is not { } operated
        ? []
        : [.. operated.ContactsIn(wiring).Where(contact => rest.Conducts(contact) != StateNetwork.Conducts(wiring, setUp.State, contact))];

    /// <inheritdoc/>
    public bool Conducts(NetworkElement element) => _rest.Conducts(element) != _operated.Contains(element.Index);

    /// <inheritdoc/>
    public double LowOhms(int a, int b) => _low.Ohms(a, b);

    /// <inheritdoc/>
    public double HighOhms(int a, int b) => _high.Ohms(a, b);

    /// <inheritdoc/>
    public int PieceOf(int node) => _low.PieceOf(node);

    private static ChangedNetwork Changed(ResistorNetwork network, ElementSwitches switches, IReadOnlyList<NetworkElement> operated)
    {
        var changed = new ChangedNetwork(network);
        changed.Apply([.. operated.Select(switches.Operate).Where(change => change.DeltaConductance.High != 0)]);
        return changed;
    }
}
