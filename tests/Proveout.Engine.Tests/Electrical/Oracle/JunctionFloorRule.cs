using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>How far junctions may pull the lower limit of a reading down: a walk over resistors and junctions, whichever way these point.</summary>
internal sealed class JunctionFloorRule
{
    // What the project says of the meter: at most 1 mA through the leads and 3.3 V across them; common practice.
    private const double MeterVolts = 3.3;
    private const double MeterAmperes = 1e-3;

    private readonly double _floorOhms;
    private readonly int[] _group;
    private readonly HashSet<int> _withJunction;

    public JunctionFloorRule(WiringNetwork wiring, Resistor[] resistors)
    {
        var junctions = wiring.Elements.Where(element => element.Part is Diode diode && diode.ForwardLow.Volts < MeterVolts).ToArray();
        _floorOhms = junctions.Min(junction => ((Diode)junction.Part!).ForwardLow.Volts) / MeterAmperes;
        var neighbours = resistors.Select(resistor => (resistor.A, resistor.B)).Concat(junctions.Select(junction => (junction.A, junction.B)))
            .SelectMany(pair => new[] { pair, (A: pair.B, B: pair.A) })
            .ToLookup(pair => pair.A, pair => pair.B);
        _group = [.. Enumerable.Repeat(-1, wiring.Nodes.Count)];
        for (var node = 0; node < _group.Length; node++)
            Flood(node, node, neighbours);
        _withJunction = [.. junctions.Select(junction => _group[junction.A])];
    }

    public double Apply(double openOhms, int a, int b) =>
        openOhms > _floorOhms && _group[a] == _group[b] && _withJunction.Contains(_group[a]) ? _floorOhms : openOhms;

    private void Flood(int start, int group, ILookup<int, int> neighbours)
    {
        var stack = new Stack<int>([start]);
        while (stack.TryPop(out var node))
        {
            if (_group[node] >= 0)
                continue;
            _group[node] = group;
            foreach (var next in neighbours[node])
                stack.Push(next);
        }
    }
}
