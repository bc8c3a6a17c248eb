using System.Collections.Concurrent;
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
    private readonly (int Element, int Other, double Volts)[][] _stepsTo;
    private readonly ConcurrentStack<ChangedWay> _idle = [];

    /// <summary>Prepares the ways of one state of the machine.</summary>
    public PathVolts(WiringNetwork wiring, StateNetwork state, DiodeTestMode mode)
    {
        (_mode, _plugsApart, ElementCount) = (mode, state.State.PlugsApart, wiring.Elements.Count);
        var steps = new List<(int, int, double)>[wiring.Nodes.Count];
        var stepsTo = new List<(int, int, double)>[wiring.Nodes.Count];
        for (var node = 0; node < steps.Length; node++)
            (steps[node], stepsTo[node]) = ([], []);
        foreach (var element in wiring.Elements.Where(state.Conducts))
        {
            var forward = (element.Part as Diode)?.ForwardHigh.Volts;
            Add(element.A, element.Index, element.B, forward ?? Volts(element.HighOhms));
            if (forward is null)
                Add(element.B, element.Index, element.A, Volts(element.HighOhms));
        }

        _steps = [.. steps.Select(list => list.ToArray())];
        _stepsTo = [.. stepsTo.Select(list => list.ToArray())];

        void Add(int from, int element, int to, double volts)
        {
            if (volts >= _mode.LeastOpenVolts)
                return;
            steps[from].Add((element, to, volts));
            stepsTo[to].Add((element, from, volts));
        }
    }

    /// <summary>Volts at which a way shows as over range.</summary>
    public double OpenVolts => _mode.LeastOpenVolts;

    /// <summary>Number of nodes.</summary>
    public int NodeCount => _steps.Length;

    /// <summary>Number of elements of the wiring.</summary>
    public int ElementCount { get; }

    /// <summary>The best way in the machine as designed; its volts are infinite when there is none below what shows as over range.</summary>
    public VoltWay Best(int red, int black)
    {
        var way = _idle.TryPop(out var idle) ? idle : new ChangedWay(this);
        var best = way.Designed(red, black);
        _idle.Push(way);
        return best;
    }

    /// <summary>The steps from a node, along the current or against it, under a fault.</summary>
    /// <param name="node">The node.</param>
    /// <param name="isBackward">True for the steps that lead to the node.</param>
    public ReadOnlySpan<(int Element, int Other, double Volts)> StepsAt(int node, bool isBackward) => isBackward ? _stepsTo[node] : _steps[node];

    /// <summary>The most volts along an element under a fault; infinite when it is not there.</summary>
    /// <param name="element">Number of the element.</param>
    /// <param name="own">The volts in the machine as designed.</param>
    /// <param name="changes">What the fault does.</param>
    public double VoltsOf(int element, double own, IReadOnlyList<ElementChange> changes)
    {
        for (var index = 0; index < changes.Count; index++)
            if (changes[index] is var change && change.ChangedElement == element)
                switch (change)
                {
                    case Cut:
                        return double.PositiveInfinity;
                    case AddInSeries series:
                        return own + Volts(series.HighOhms);
                    case Replace replace:
                        return Volts(replace.HighOhms);
                }

        return own;
    }

    /// <summary>The most volts along a contact that a fault makes; infinite when plugs are apart and a plug makes it.</summary>
    public double VoltsOf(Join join) => join.ByPlug && _plugsApart ? double.PositiveInfinity : Volts(join.HighOhms);

    private double Volts(double ohms) => ohms * _mode.MostAmperes;
}
