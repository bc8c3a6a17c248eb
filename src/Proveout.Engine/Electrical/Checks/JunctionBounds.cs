namespace Proveout.Engine.Electrical;

/// <summary>Sharpens the lower limit of a sound machine's readings by what its junctions can do at each port.</summary>
/// <remarks>
/// With every junction open and one volt from a to b, a node x lies at (Rab + Rxb - Rxa) / (2 Rab); each of the three resistances lies between
/// its values at the low and high limits (Rayleigh), so each junction's forward voltage is at most a known share of the port's. Up to the port
/// voltage at which the first junction could conduct, the solution with all junctions open is the solution, and it is the only one (the
/// complementarity problem of a network of resistors and ideal junctions has a positive definite matrix). So the reading is that of the
/// network with junctions open, or at least that voltage over the meter's test current.
/// </remarks>
internal sealed class JunctionBounds(StateNetwork state)
{
    /// <summary>Limits in ohms of the resistance between two nodes, red lead on the first; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int red, int black)
    {
        var (low, high) = state.Resistance(red, black);
        var open = state.Low.Network.Resistance(red, black);
        if (open < StrayPieces.NegligibleOhms)
            return (low, high);
        var islands = state.Low.Network.Islands;
        var threshold = double.IsPositiveInfinity(open) ? state.Strays.WayVolts(islands.Of(red), islands.Of(black)) : ThresholdVolts(red, black, open);
        var floor = threshold >= ElementBand.OpenCircuitVolts ? double.PositiveInfinity : threshold / ElementBand.TestCurrentAmperes;
        return (Math.Max(low, Math.Min(state.Strays.WithLeakage(open, islands.Of(red), islands.Of(black)), floor)), high);
    }

    /// <summary>Port voltage below which no junction conducts; infinite when none can. The leads hang together.</summary>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    /// <param name="low">Resistance between them in ohms with every resistance at its low limit and junctions open.</param>
    public double ThresholdVolts(int red, int black, double low)
    {
        var least = double.PositiveInfinity;
        foreach (var (anode, cathode, forward) in state.StrayPaths.Junctions)
            if (GreatestShare(anode, cathode, red, black, low) is > 0 and var share)
                least = Math.Min(least, forward / share);
        return least;
    }

    // Greatest forward voltage of a junction for one volt at the port, with all junctions open.
    private double GreatestShare(int anode, int cathode, int red, int black, double low)
    {
        var (lowest, highest) = (state.Low.Network, state.High.Network);
        var (ofAnode, ofCathode, ofPort) = (lowest.Islands.Of(anode), lowest.Islands.Of(cathode), lowest.Islands.Of(red));
        if (ofAnode != ofPort && ofCathode != ofPort)
            return 0; // current gets there only through a junction that touches the port's island
        if (ofAnode != ofCathode)
            return 1;
        var most = highest.Resistance(black, anode) - lowest.Resistance(red, anode) - lowest.Resistance(black, cathode) + highest.Resistance(red, cathode);
        return double.IsFinite(most) ? Math.Clamp(most / (2 * low), 0, 1) : 1;
    }
}
