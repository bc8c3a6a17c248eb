namespace Proveout.Engine.Electrical;

/// <summary>Says when no junction can conduct while a port is measured, so that the port is purely resistive.</summary>
/// <remarks>
/// With every junction open and one volt from a to b, a node x lies at (Rab + Rxb - Rxa) / (2 Rab); each of the three resistances lies between
/// its values at the low and high limits (Rayleigh), so the forward voltage of every junction has an upper bound. While all those bounds stay
/// below the junctions' lowest forward voltage, the solution with all junctions open is the solution, and it is the only one (the
/// complementarity problem of a network of resistors and ideal junctions has a positive definite matrix).
/// </remarks>
internal sealed class JunctionBounds(StateNetwork state)
{
    /// <summary>Limits in ohms of the resistance between two nodes, red lead on the first; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int red, int black)
    {
        var (low, high) = state.Resistance(red, black);
        var open = state.Low.Network.Resistance(red, black);
        return open > low && AllBlocked(red, black, open) ? (open, high) : (low, high);
    }

    private bool AllBlocked(int red, int black, double low)
    {
        if (double.IsPositiveInfinity(low))
            return !CanReach(red, black);
        foreach (var (anode, cathode, forward) in state.Junctions.All)
            if (GreatestForwardVolts(anode, cathode, red, black, low) >= forward)
                return false;
        return true;
    }

    private double GreatestForwardVolts(int anode, int cathode, int red, int black, double low)
    {
        var lowest = state.Low.Network;
        var highest = state.High.Network;
        var islands = lowest.Islands;
        if (islands.Of(anode) != islands.Of(red) || islands.Of(cathode) != islands.Of(red))
            return islands.Of(anode) == islands.Of(cathode) ? 0 : ElementBand.OpenCircuitVolts;

        var most = highest.Resistance(anode, black) - lowest.Resistance(anode, red) - lowest.Resistance(cathode, black) + highest.Resistance(cathode, red);
        return double.IsFinite(most) ? ElementBand.OpenCircuitVolts * Math.Max(0, most) / (2 * low) : ElementBand.OpenCircuitVolts;
    }

    // Current from red to black runs along paths (flow decomposition); through a junction only from anode to cathode.
    private bool CanReach(int red, int black)
    {
        var islands = state.Low.Network.Islands;
        var reached = new HashSet<int> { islands.Of(red) };
        for (var grew = true; grew;)
        {
            grew = false;
            foreach (var (anode, cathode, _) in state.Junctions.All)
                if (reached.Contains(islands.Of(anode)))
                    grew |= reached.Add(islands.Of(cathode));
        }

        return reached.Contains(islands.Of(black));
    }
}
