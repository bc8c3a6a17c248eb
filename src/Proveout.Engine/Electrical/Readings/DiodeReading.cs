using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The limits of what a diode test measures at a port.</summary>
/// <remarks>
/// Where the port is made of series and parallel connections, the limits are the volts at the two corners of all tolerances. Elsewhere they are
/// bounds that hold whichever junctions conduct. The content G of the port, convex in the current, rises with every resistance and forward
/// voltage, so chords of G at the corners bound its slope, the volts, from below, and what a junction that conducts holds, the port holds too;
/// from above, junctions only lower the volts, and no way from red to black drops less than the port.
/// </remarks>
internal sealed class DiodeReading
{
    private static readonly double[] LowerChords = [1e-6, 0.1, 0.25, 0.5, 0.75, 0.9];

    // Bounds that meet may cross by what the ties between islands carry.
    private const double RoundingVolts = 1e-4;

    // With more junctions in play the chords are left out, and the bounds that need no solution remain.
    private const int MostJunctions = 400;

    private readonly WiringNetwork _wiring;
    private readonly StateNetwork _state;
    private readonly Junction[] _junctions;
    private readonly FlowBound _flow;
    private readonly Islands _joined;
    private readonly ResistorNetwork _low;
    private readonly DiodeBounds _bounds;
    private readonly Lazy<JunctionMesh> _lowMesh;
    private readonly Lazy<JunctionMesh> _highMesh;

    public DiodeReading(WiringNetwork wiring, StateNetwork state)
    {
        (_wiring, _state) = (wiring, state);
        _junctions =
        [
            .. from element in wiring.Elements
               let diode = element.Part as Diode
               where diode is not null && state.Conducts(element)
               select new Junction(element.A, element.B, diode.ForwardLow.Volts, diode.ForwardHigh.Volts),
        ];
        _low = new LimitNetwork(wiring, element => state.Conducts(element) ? 1 / LeastOhms.Of(element) : 0).Network;
        _flow = new FlowBound(wiring, state.Conducts, _junctions);
        _joined = new Islands(wiring.Nodes.Count, wiring.Elements.Where(state.Conducts).Select(element => (element.A, element.B)));
        _bounds = new DiodeBounds(wiring, state, MeterMode.DiodeTest);
        _lowMesh = new Lazy<JunctionMesh>(() => new JunctionMesh(_low, [.. _junctions.Select(junction => (junction.Anode, junction.Cathode, junction.LowVolts))]));
        _highMesh = new Lazy<JunctionMesh>(
            () => new JunctionMesh(_state.High.Network, [.. _junctions.Select(junction => (junction.Anode, junction.Cathode, junction.HighVolts))]));
    }

    /// <summary>Limits of the volts; infinite when over range, null when they could not be found.</summary>
    public (double LowVolts, double HighVolts)? Volts(int red, int black, DiodeTestMode mode)
    {
        if (_joined.Of(red) != _joined.Of(black))
            return (double.PositiveInfinity, double.PositiveInfinity);
        var (low, high) = _bounds.Volts(red, black);
        low = Math.Min(mode.MostOpenVolts, Math.Max(low, _flow.Volts(red, black, mode)));
        if (_junctions.Length <= MostJunctions && Solved(red, black, mode) is var (lower, upper))
            (low, high) = (Math.Max(low, lower), Math.Min(high, upper));
        return low <= high + RoundingVolts ? (low, Math.Max(low, high)) : null;
    }

    private (double LowVolts, double HighVolts)? Solved(int red, int black, DiodeTestMode mode)
    {
        var near = OnTheWay(red, black);
        var low = new JunctionPort(_lowMesh.Value, near, red, black);
        var high = new JunctionPort(_highMesh.Value, near, red, black);
        if (low.Drive(mode.LeastAmperes) is not { } atLow || high.Drive(mode.MostAmperes) is not { } atHigh)
            return null;
        var elements = _wiring.Elements.Where(_state.Conducts).Select(element => (element.A, element.B));
        return SeriesParallel.IsPort(elements, red, black)
            ? (atLow.Volts, atHigh.Volts)
            : (Lower(high, atLow.Content, mode), high.OpenOhms * mode.MostAmperes);
    }

    /// <summary>What the meter may show; <see cref="ReadingInterval.Anything"/> when the limits could not be found.</summary>
    public ReadingInterval Shown(int red, int black, DiodeTestMode mode) =>
        Volts(red, black, mode) is var (low, high) ? mode.Shown(low, high) : ReadingInterval.Anything;

    private static double Lower(JunctionPort high, double content, DiodeTestMode mode)
    {
        var amperes = mode.LeastAmperes;
        var bound = 0.0;
        foreach (var part in LowerChords)
            if (high.Drive(part * amperes) is { } from)
                bound = Math.Max(bound, (content - from.Content) / ((1 - part) * amperes));
        return bound;
    }

    // Only a junction that current can reach from red, and leave towards black, can conduct.
    private int[] OnTheWay(int red, int black)
    {
        var islands = _low.Islands;
        var fromRed = Reached(islands.Of(red), junction => (islands.Of(junction.Anode), islands.Of(junction.Cathode)));
        var toBlack = Reached(islands.Of(black), junction => (islands.Of(junction.Cathode), islands.Of(junction.Anode)));
        return
        [
            .. Enumerable.Range(0, _junctions.Length)
                .Where(index => fromRed.Contains(islands.Of(_junctions[index].Anode)) && toBlack.Contains(islands.Of(_junctions[index].Cathode))),
        ];
    }

    private HashSet<int> Reached(int start, Func<Junction, (int From, int To)> step)
    {
        var reached = new HashSet<int> { start };
        for (var grew = true; grew;)
        {
            grew = false;
            foreach (var (from, to) in _junctions.Select(step))
                grew |= reached.Contains(from) && reached.Add(to);
        }

        return reached;
    }
}
