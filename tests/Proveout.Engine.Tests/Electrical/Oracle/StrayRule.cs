using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>How far junctions and insulation may pull the lower limit of a reading down, by walks over resistors and junctions.</summary>
internal sealed class StrayRule
{
    // What the project says of the meter: at most 1 mA through the leads and 3.3 V across them; common practice.
    private const double MeterVolts = 3.3;
    private const double MeterAmperes = 1e-3;

    private readonly int[] _piece;
    private readonly int[] _group;
    private readonly double[] _leakage;
    private readonly double[] _leastVolts;

    public StrayRule(WiringNetwork wiring, Resistor[] resistors)
    {
        var junctions = wiring.Elements.Where(element => element.Part is Diode diode && diode.ForwardLow.Volts < MeterVolts).ToArray();
        var metal = resistors.Select(resistor => (resistor.A, resistor.B)).ToArray();
        _piece = Flood(wiring.Nodes.Count, metal);
        _group = Flood(wiring.Nodes.Count, metal.Concat(wiring.Elements.Where(element => element.Part is Insulation || junctions.Contains(element)).Select(element => (element.A, element.B))));
        _leakage = new double[wiring.Nodes.Count];
        foreach (var element in wiring.Elements)
            if (element.Part is Insulation insulation)
                foreach (var piece in new[] { _piece[element.A], _piece[element.B] }.Distinct())
                    _leakage[piece] += 1 / insulation.AtLeast.Ohms;
        _leastVolts = [.. Enumerable.Repeat(double.PositiveInfinity, wiring.Nodes.Count)];
        foreach (var junction in junctions)
            foreach (var node in new[] { junction.A, junction.B })
                _leastVolts[_piece[node]] = Math.Min(_leastVolts[_piece[node]], ((Diode)junction.Part!).ForwardLow.Volts);
    }

    /// <summary>The lower limit, from that of the resistances alone.</summary>
    public double Apply(double ohms, int a, int b)
    {
        if (ohms < 1)
            return ohms;
        return _group[a] != _group[b] ? ohms : Math.Max(AtPiece(_piece[a]), AtPiece(_piece[b]));

        double AtPiece(int piece) => Math.Min(1 / ((1 / ohms) + _leakage[piece]), _leastVolts[piece] / MeterAmperes);
    }

    private static int[] Flood(int nodeCount, IEnumerable<(int A, int B)> pairs)
    {
        var neighbours = pairs.SelectMany(pair => new[] { pair, (A: pair.B, B: pair.A) }).ToLookup(pair => pair.A, pair => pair.B);
        int[] found = [.. Enumerable.Repeat(-1, nodeCount)];
        for (var start = 0; start < nodeCount; start++)
            for (var stack = new Stack<int>([start]); stack.TryPop(out var node);)
            {
                if (found[node] >= 0)
                    continue;
                found[node] = start;
                foreach (var next in neighbours[node])
                    stack.Push(next);
            }

        return found;
    }
}
