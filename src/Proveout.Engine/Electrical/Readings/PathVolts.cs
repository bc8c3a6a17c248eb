using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An upper bound of the volts of a diode test: those along the best single way from red to black.</summary>
/// <remarks>
/// No element of a network of resistors and junctions carries more than the current fed in: sort the nodes by potential, and every element across
/// a level carries current downwards, all together the current fed in. So along any way, whatever lies beside it, each resistance drops at
/// most its highest value times the current, each junction at most its highest forward voltage. Dijkstra, Numerische Mathematik 1 (1959)
/// 269-271. Safe for use from several threads.
/// </remarks>
internal sealed class PathVolts
{
    private readonly DiodeTestMode _mode;
    private readonly bool _plugsApart;
    private readonly (int Element, int Other, double Volts)[][] _steps;

    /// <summary>Prepares the ways of one state of the machine.</summary>
    public PathVolts(WiringNetwork wiring, StateNetwork state, DiodeTestMode mode)
    {
        (_mode, _plugsApart) = (mode, state.State.PlugsApart);
        var steps = new List<(int, int, double)>[wiring.Nodes.Count];
        for (var node = 0; node < steps.Length; node++)
            steps[node] = [];
        foreach (var element in wiring.Elements.Where(state.Conducts))
        {
            var forward = (element.Part as Diode)?.ForwardHigh.Volts;
            Add(element.A, element.Index, element.B, forward ?? Volts(element.HighOhms));
            if (forward is null)
                Add(element.B, element.Index, element.A, Volts(element.HighOhms));
        }

        _steps = [.. steps.Select(list => list.ToArray())];

        void Add(int from, int element, int to, double volts)
        {
            if (volts < _mode.LeastOpenVolts)
                steps[from].Add((element, to, volts));
        }
    }

    /// <summary>Number of nodes.</summary>
    public int NodeCount => _steps.Length;

    /// <summary>The best way in the machine as designed; its volts are infinite when there is none below what shows as over range.</summary>
    public VoltWay Best(int red, int black)
    {
        var reached = new Dictionary<int, (double Volts, int Element, int From)> { [red] = (0, -1, -1) };
        var queue = new PriorityQueue<int, double>([(red, 0)]);
        while (queue.TryDequeue(out var node, out var volts))
        {
            if (node == black)
                return new VoltWay(volts, Trace(reached, black));
            if (volts > reached[node].Volts)
                continue;
            foreach (var (element, other, own) in _steps[node])
                if (volts + own is var onward && onward < _mode.LeastOpenVolts && !(reached.TryGetValue(other, out var known) && known.Volts <= onward))
                {
                    reached[other] = (onward, element, node);
                    queue.Enqueue(other, onward);
                }
        }

        return VoltWay.None;
    }

    /// <summary>Least volts from a red lead to every node under a fault.</summary>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="changes">What the fault does.</param>
    /// <param name="volts">For each node infinite; afterwards the volts of those that are reached below what shows as over range.</param>
    /// <param name="reached">Empty; afterwards the nodes that are reached.</param>
    /// <param name="queue">Empty, before and after.</param>
    public void FromRed(int red, IReadOnlyList<ElementChange> changes, double[] volts, List<int> reached, PriorityQueue<int, double> queue)
    {
        Reach(red, 0);
        while (queue.TryDequeue(out var node, out var here))
        {
            if (here > volts[node])
                continue;
            foreach (var (element, other, own) in _steps[node])
                Reach(other, here + VoltsOf(element, own, changes));
            foreach (var change in changes)
                if (change is Join join && !(join.ByPlug && _plugsApart) && (join.A == node || join.B == node))
                    Reach(join.A == node ? join.B : join.A, here + Volts(join.HighOhms));
        }

        void Reach(int node, double onward)
        {
            if (onward >= _mode.LeastOpenVolts || volts[node] <= onward)
                return;
            if (double.IsPositiveInfinity(volts[node]))
                reached.Add(node);
            volts[node] = onward;
            queue.Enqueue(node, onward);
        }
    }

    private double VoltsOf(int element, double own, IReadOnlyList<ElementChange> changes)
    {
        foreach (var change in changes)
            switch (change)
            {
                case Cut cut when cut.Element == element:
                    return double.PositiveInfinity;
                case AddInSeries series when series.Element == element:
                    return own + Volts(series.HighOhms);
                case Replace replace when replace.Element == element:
                    return Volts(replace.HighOhms);
            }

        return own;
    }

    private double Volts(double ohms) => ohms * _mode.MostAmperes;

    private static int[] Trace(Dictionary<int, (double Volts, int Element, int From)> reached, int black)
    {
        var elements = new List<int>();
        for (var node = black; reached[node].From >= 0; node = reached[node].From)
            if (reached[node].Element >= 0)
                elements.Add(reached[node].Element);
        return [.. elements];
    }
}
