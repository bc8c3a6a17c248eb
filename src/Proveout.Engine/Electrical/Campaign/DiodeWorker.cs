using System.Numerics;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the diode tests of one set-up, on the networks that the resistances of the set-up were simulated on. One thread's own.</summary>
internal sealed class DiodeWorker(DiodeTable table, PortWorker ports) : ICheckWorker
{
    // Candidates by their red lead, so that one search of ways serves all of one lead.
    private readonly SortedSet<int> _asked = new(Comparer<int>.Create((one, two) =>
        (table.Candidates[one].A, one).CompareTo((table.Candidates[two].A, two))));

    private readonly (double LowVolts, double HighVolts)[] _volts = new (double, double)[table.Candidates.Length];
    private readonly double[] _ways = [.. Enumerable.Repeat(double.PositiveInfinity, table.Paths.NodeCount)];
    private readonly List<int> _reached = [];
    private readonly PriorityQueue<int, double> _queue = new();
    private int _red = -1;

    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, List<int> checks, List<ReadingInterval> intervals)
    {
        if (!ports.IsApplied)
            return;
        _red = -1;
        Ask(fault);
        foreach (var index in _asked)
            _volts[index] = VoltsOf(index, fault);
        foreach (var index in _asked.Order())
        {
            var (low, high) = _volts[index];
            if (PortWorker.Same(low, table.Good[index].LowVolts) && PortWorker.Same(high, table.Good[index].HighVolts))
                continue;
            checks.Add(table.FirstCheck + index);
            intervals.Add(DiodeTable.Mode.Shown(low, high));
        }
    }

    // The candidates that the fault may alter: by resistance, by an element of their way, or by junctions on pieces that part or join.
    private void Ask(WiringFault fault)
    {
        _asked.Clear();
        var first = table.PortOf(0);
        for (var word = first / 64; word < ports.Touched.Length; word++)
            for (var left = ports.Touched[word]; left != 0; left &= left - 1)
                if ((word * 64) + BitOperations.TrailingZeroCount(left) is var port && port >= first)
                    _asked.Add(port - first);
        foreach (var change in fault.Changes)
            if (change.ChangedElement is { } element)
                _asked.UnionWith(table.WaysThrough(element));
        if (ports.Low.IsApplied && !ports.Low.Network.HasPiecesAsBefore)
            foreach (var island in ports.Low.Network.TouchedIslands)
                _asked.UnionWith(table.JoinedTo(island));
    }

    // Limits of the volts of a port under the fault that was applied; infinite when over range.
    private (double LowVolts, double HighVolts) VoltsOf(int index, WiringFault fault)
    {
        var port = table.PortOf(index);
        var altersLow = ports.Low.Alters(port, out var low);
        var altersHigh = ports.High.Alters(port, out var high);
        var isWayTouched = table.Ways[index].IsTouchedBy(fault);
        if (!altersLow && !altersHigh && !isWayTouched && !MovesJunctions(port))
            return table.Good[index];
        return DiodeBounds.Of(
            DiodeTable.Mode,
            altersLow ? low : table.Low.Ohms(port),
            altersHigh ? high : table.High.Ohms(port),
            ports.Strays,
            ports.Low.IsApplied ? ports.Low.Network.PiecesOf(port) : table.Low.IslandsOf(port),
            isWayTouched ? WayVolts(table.Candidates[index], fault) : table.Ways[index].Volts);
    }

    private double WayVolts(CandidateCheck candidate, WiringFault fault)
    {
        if (_red != candidate.A)
        {
            foreach (var node in _reached)
                _ways[node] = double.PositiveInfinity;
            _reached.Clear();
            _red = candidate.A;
            table.Paths.FromRed(_red, fault.Changes, _ways, _reached, _queue);
        }

        return _ways[candidate.B];
    }

    // Pieces that part or join anywhere on the way of junctions and insulation may open or close a way.
    private bool MovesJunctions(int port)
    {
        if (!ports.Low.IsApplied || ports.Low.Network.HasPiecesAsBefore)
            return false;
        var island = table.Low.IslandsOf(port).OfA;
        foreach (var touched in ports.Low.Network.TouchedIslands)
            if (table.Strays.AreJoined(island, touched))
                return true;
        return false;
    }
}
