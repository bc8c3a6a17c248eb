using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The limits of what a diode test measures at a port.</summary>
/// <remarks>
/// Where the port is made of series and parallel connections, the limits are the volts at the two corners of all tolerances. Elsewhere they are
/// bounds that hold whichever junctions conduct. The content G of the port, convex in the current, rises with every resistance and forward
/// voltage, so chords of G at the corners bound its slope, the volts, from both sides; junctions only lower the volts; and what a
/// junction that conducts holds, the port holds too.
/// </remarks>
internal sealed class DiodeReading
{
    private static readonly double[] LowerChords = [1e-6, 0.1, 0.25, 0.5, 0.75, 0.9];
    private static readonly double[] UpperChords = [1.1, 1.25, 1.5, 2, 3, 5, 10, 30, 100];

    // Bounds that meet may cross by what the ties between islands carry.
    private const double RoundingVolts = 1e-4;

    private readonly WiringNetwork _wiring;
    private readonly StateNetwork _state;
    private readonly Junction[] _junctions;
    private readonly FlowBound _flow;
    private readonly Islands _joined;
    private readonly ResistorNetwork _low;

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
    }

    /// <summary>Limits of the volts; infinite when over range, null when they could not be found.</summary>
    public (double LowVolts, double HighVolts)? Volts(int red, int black, DiodeTestMode mode)
    {
        if (_joined.Of(red) != _joined.Of(black))
            return (double.PositiveInfinity, double.PositiveInfinity);
        var near = OnTheWay(red, black);
        var low = new JunctionPort(_low, [.. near.Select(junction => (junction.Anode, junction.Cathode, junction.LowVolts))], red, black);
        var high = new JunctionPort(_state.High.Network, [.. near.Select(junction => (junction.Anode, junction.Cathode, junction.HighVolts))], red, black);
        if (low.Drive(mode.LeastAmperes) is not { } atLow || high.Drive(mode.MostAmperes) is not { } atHigh)
            return null;
        var elements = _wiring.Elements.Where(_state.Conducts).Select(element => (element.A, element.B));
        if (SeriesParallel.IsPort(elements, red, black))
            return (atLow.Volts, atHigh.Volts);
        var lower = Lower(low, high, atLow.Content, mode);
        lower = Math.Max(lower, Math.Min(low.OpenOhms * mode.LeastAmperes, near.Select(junction => junction.LowVolts).DefaultIfEmpty(double.PositiveInfinity).Min()));
        lower = Math.Max(lower, _flow.Volts(red, black, mode));
        var upper = Upper(low, high, mode);
        return lower <= upper + RoundingVolts ? (lower, Math.Max(lower, upper)) : null;
    }

    /// <summary>What the meter may show; <see cref="ReadingInterval.Anything"/> when the limits could not be found.</summary>
    public ReadingInterval Shown(int red, int black, DiodeTestMode mode) =>
        Volts(red, black, mode) is var (low, high) ? mode.Shown(low, high) : ReadingInterval.Anything;

    private static double Lower(JunctionPort low, JunctionPort high, double content, DiodeTestMode mode)
    {
        var amperes = mode.LeastAmperes;
        var bound = 0.0;
        foreach (var part in LowerChords)
            if (high.Drive(part * amperes) is { } from)
                bound = Math.Max(bound, (content - from.Content) / ((1 - part) * amperes));
        return bound;
    }

    private static double Upper(JunctionPort low, JunctionPort high, DiodeTestMode mode)
    {
        var amperes = mode.MostAmperes;
        var bound = high.OpenOhms * amperes;
        if (low.Drive(amperes) is { } from)
            foreach (var times in UpperChords)
                if (high.Drive(times * amperes) is { } to)
                    bound = Math.Min(bound, (to.Content - from.Content) / ((times - 1) * amperes));
        return bound;
    }

    // Only a junction that current can reach from red, and leave towards black, can conduct.
    private Junction[] OnTheWay(int red, int black)
    {
        var islands = _low.Islands;
        var fromRed = Reached(islands.Of(red), junction => (islands.Of(junction.Anode), islands.Of(junction.Cathode)));
        var toBlack = Reached(islands.Of(black), junction => (islands.Of(junction.Cathode), islands.Of(junction.Anode)));
        return [.. _junctions.Where(junction => fromRed.Contains(islands.Of(junction.Anode)) && toBlack.Contains(islands.Of(junction.Cathode)))];
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
