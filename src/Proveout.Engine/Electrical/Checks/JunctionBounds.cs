namespace Proveout.Engine.Electrical;

/// <summary>Sharpens the lower limit of a sound machine's readings by what its junctions can do at each port. As safe for several threads as the state that it asks.</summary>
/// <remarks>
/// With every junction open and one volt from a to b, a node x lies at (Rab + Rxb - Rxa) / (2 Rab); each of the three resistances lies between
/// its values at the low and high limits (Rayleigh), so each junction's forward voltage is at most a known share of the port's. Up to the port
/// voltage at which the first junction could conduct, the solution with all junctions open is the solution, and it is the only one (the
/// complementarity problem of a network of resistors and ideal junctions has a positive definite matrix). So the reading is that of the
/// network with junctions open, or at least that voltage over the meter's test current.
/// </remarks>
internal sealed class JunctionBounds
{
    private readonly IStateReadings _state;
    private readonly Dictionary<int, double> _leadingAway = [];
    private readonly Dictionary<int, (int Anode, int Cathode, double ForwardVolts)[]> _within;

    /// <summary>Sorts the junctions by the pieces that they end on.</summary>
    public JunctionBounds(IStateReadings state)
    {
        _state = state;
        foreach (var (anode, cathode, forward) in state.StrayPaths.Junctions)
            if (state.PieceOf(anode) is var ofAnode && state.PieceOf(cathode) is var ofCathode && ofAnode != ofCathode)
            {
                _leadingAway[ofAnode] = Math.Min(LeadingAwayFrom(ofAnode), forward);
                _leadingAway[ofCathode] = Math.Min(LeadingAwayFrom(ofCathode), forward);
            }

        // One within a piece sees no more than the port does, so that it counts only below those that lead away.
        _within = state.StrayPaths.Junctions
            .Where(junction => state.PieceOf(junction.Anode) == state.PieceOf(junction.Cathode) && junction.ForwardVolts < LeadingAwayFrom(state.PieceOf(junction.Anode)))
            .GroupBy(junction => state.PieceOf(junction.Anode))
            .ToDictionary(piece => piece.Key, piece => piece.OrderBy(junction => junction.ForwardVolts).ToArray());
    }

    /// <summary>Limits in ohms of the resistance between two nodes, red lead on the first; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) Resistance(int red, int black)
    {
        var (open, high) = (_state.LowOhms(red, black), _state.HighOhms(red, black));
        if (open < StrayPieces.NegligibleOhms)
            return (open, high);
        var (ofRed, ofBlack) = (_state.PieceOf(red), _state.PieceOf(black));
        var (leaking, limit) = (_state.Strays.WithLeakage(open, ofRed, ofBlack), _state.Strays.LowerLimit(open, ofRed, ofBlack));
        // Where insulation alone holds the reading down, no junction need be asked.
        if (limit >= leaking)
            return (limit, high);
        var threshold = double.IsPositiveInfinity(open) ? _state.Strays.WayVolts(ofRed, ofBlack) : ThresholdVolts(red, black, open, leaking * ElementBand.TestCurrentAmperes);
        var floor = threshold >= ElementBand.OpenCircuitVolts ? double.PositiveInfinity : threshold / ElementBand.TestCurrentAmperes;
        return (Math.Max(limit, Math.Min(leaking, floor)), high);
    }

    /// <summary>Port voltage below which no junction conducts, or any from which on it does not matter; infinite when none can. The leads hang together.</summary>
    /// <remarks>A junction that leads away from the port's piece may see all of the port's voltage; current gets to others only through one that touches the piece.</remarks>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    /// <param name="low">Resistance between them in ohms with every resistance at its low limit and junctions open.</param>
    /// <param name="most">Volts from which on it does not matter, for insulation then lets the reading be no higher.</param>
    private double ThresholdVolts(int red, int black, double low, double most)
    {
        var least = LeadingAwayFrom(_state.PieceOf(red));
        foreach (var (anode, cathode, forward) in _within.GetValueOrDefault(_state.PieceOf(red), []))
        {
            // The lowest come first, and none sees more than the port does.
            if (forward >= Math.Min(least, most))
                break;
            if (GreatestShare(anode, cathode, red, black, low) is > 0 and var share)
                least = Math.Min(least, forward / share);
        }

        return least;
    }

    private double LeadingAwayFrom(int piece) => _leadingAway.GetValueOrDefault(piece, double.PositiveInfinity);

    // Greatest forward voltage of a junction within the port's piece for one volt at the port, with all junctions open.
    private double GreatestShare(int anode, int cathode, int red, int black, double low)
    {
        var most = _state.HighOhms(black, anode) - _state.LowOhms(red, anode) - _state.LowOhms(black, cathode) + _state.HighOhms(red, cathode);
        return double.IsFinite(most) ? Math.Clamp(most / (2 * low), 0, 1) : 1;
    }
}
