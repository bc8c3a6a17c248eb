namespace Proveout.Engine.Electrical;

/// <summary>A lower bound of the volts at a port from the junctions that its current must pass.</summary>
/// <remarks>
/// The current divides into paths from red to black along which no element has a voltage against it. Elements so resistive that, at the voltage
/// of an open meter, they carry less than the least test current together cannot carry all of it: some path avoids them all, and the volts
/// are at least the forward voltages on the path that has the lowest sum.
/// </remarks>
internal sealed class FlowBound(WiringNetwork wiring, Func<NetworkElement, bool> conducts, IReadOnlyList<Junction> junctions)
{
    private readonly NetworkElement[] _resistances =
        [.. wiring.Elements.Where(element => conducts(element) && double.IsFinite(LeastOhms.Of(element))).OrderByDescending(LeastOhms.Of)];

    /// <summary>Least sum of forward voltages on any path; the meter's open voltage when there is no path.</summary>
    public double Volts(int red, int black, DiodeTestMode mode)
    {
        var nets = new Numerics.Islands(wiring.Nodes.Count, Strong(mode).Select(element => (element.A, element.B)));
        var steps = junctions.Where(junction => nets.Of(junction.Anode) != nets.Of(junction.Cathode)).ToLookup(junction => nets.Of(junction.Anode));
        var least = new Dictionary<int, double> { [nets.Of(red)] = 0 };
        var queue = new PriorityQueue<int, double>([(nets.Of(red), 0)]);
        while (queue.TryDequeue(out var net, out var volts))
        {
            if (net == nets.Of(black))
                return Math.Min(volts, mode.MostOpenVolts);
            foreach (var junction in steps[net])
            {
                var (other, reached) = (nets.Of(junction.Cathode), volts + junction.LowVolts);
                if (reached < least.GetValueOrDefault(other, double.PositiveInfinity))
                {
                    least[other] = reached;
                    queue.Enqueue(other, reached);
                }
            }
        }

        return mode.MostOpenVolts;
    }

    private IEnumerable<NetworkElement> Strong(DiodeTestMode mode)
    {
        var amperes = 0.0;
        foreach (var element in _resistances)
        {
            amperes += mode.MostOpenVolts / LeastOhms.Of(element);
            if (amperes >= mode.LeastAmperes)
                yield return element;
        }
    }
}
