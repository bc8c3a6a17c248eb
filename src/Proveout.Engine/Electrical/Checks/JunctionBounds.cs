using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Says when no junction can conduct while a port is measured, so that the port is purely resistive.</summary>
/// <remarks>
/// With every junction open and one volt from a to b, a node x lies at (Rab + Rxb - Rxa) / (2 Rab); each of the three resistances lies between
/// its values at the low and high limits (Rayleigh), so the forward voltage of every junction has an upper bound. While all those bounds stay
/// below the junctions' lowest forward voltage, the solution with all junctions open is the solution, and it is the only one (the
/// complementarity problem of a network of resistors and ideal junctions has a positive definite matrix).
/// </remarks>
internal sealed class JunctionBounds
{
    private readonly WiringNetwork _wiring;
    private readonly StateNetwork _state;
    private readonly Lazy<LimitNetwork> _lowWithoutJunctions;
    private readonly (int Anode, int Cathode, double ForwardVolts)[] _junctions;

    public JunctionBounds(WiringNetwork wiring, StateNetwork state)
    {
        _wiring = wiring;
        _state = state;
        _junctions =
        [
            .. from element in wiring.Elements
               where element.Part is Diode
               select (element.A, element.B, ((Diode)element.Part!).ForwardLow.Volts),
        ];
        _lowWithoutJunctions = new(() => new LimitNetwork(wiring, LowConductanceWithoutJunctions));
    }

    /// <summary>Limits in ohms of the resistance between two nodes, red lead on the first; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int red, int black)
    {
        var (low, high) = _state.Resistance(red, black);
        var lowWithout = _lowWithoutJunctions.Value.Network.Resistance(red, black);
        return lowWithout > low * (1 + 1e-9) && AllBlocked(red, black, lowWithout, high) ? (lowWithout, high) : (low, high);
    }

    private bool AllBlocked(int red, int black, double low, double high)
    {
        if (double.IsPositiveInfinity(low))
            return !CanReach(red, black);
        foreach (var (anode, cathode, forward) in _junctions)
            if (GreatestForwardVolts(anode, cathode, red, black, low, high) >= forward)
                return false;
        return true;
    }

    private double GreatestForwardVolts(int anode, int cathode, int red, int black, double low, double high)
    {
        var without = _lowWithoutJunctions.Value.Network;
        var with = _state.High.Network;
        if (!AreTogether(red, anode, cathode))
            return without.Islands.Of(anode) == without.Islands.Of(cathode) && without.Islands.Of(anode) != without.Islands.Of(red) ? 0 : ElementBand.OpenCircuitVolts;

        var most = with.Resistance(anode, black) - without.Resistance(anode, red) - without.Resistance(cathode, black) + with.Resistance(cathode, red);
        if (double.IsNaN(most) || double.IsInfinity(most) || double.IsInfinity(high))
            return ElementBand.OpenCircuitVolts;
        return ElementBand.OpenCircuitVolts * most / (2 * (most > 0 ? low : high));
    }

    private bool AreTogether(int red, int anode, int cathode)
    {
        var islands = _lowWithoutJunctions.Value.Network.Islands;
        return islands.Of(anode) == islands.Of(red) && islands.Of(cathode) == islands.Of(red);
    }

    // Current from red to black runs along paths (flow decomposition); through a junction only from anode to cathode.
    private bool CanReach(int red, int black)
    {
        var islands = _lowWithoutJunctions.Value.Network.Islands;
        var reached = new HashSet<int> { islands.Of(red) };
        var grew = true;
        while (grew)
        {
            grew = false;
            foreach (var (anode, cathode, _) in _junctions)
                if (reached.Contains(islands.Of(anode)))
                    grew |= reached.Add(islands.Of(cathode));
        }

        return reached.Contains(islands.Of(black));
    }

    private double LowConductanceWithoutJunctions(NetworkElement element) =>
        element.Part is not Diode && _state.Conducts(element) ? 1 / element.LowOhms : 0;
}
