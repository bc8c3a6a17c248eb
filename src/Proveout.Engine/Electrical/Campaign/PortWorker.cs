using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the ports of one set-up. One thread's own.</summary>
internal sealed class PortWorker(PortTable table, WiringNetwork wiring)
{
    private readonly ChangedNetwork _low = new(table.Rest.Low.Network);
    private readonly ChangedNetwork _high = new(table.Rest.High.Network);
    private JunctionGroups? _groups;
    private bool _reachedLow;
    private bool _reachedHigh;

    /// <summary>Adds the checks that a fault changes, with what they may then show.</summary>
    public void AddResponses(WiringFault fault, List<int> checks, List<ReadingInterval> intervals)
    {
        if (!Apply(fault))
            return;
        for (var index = 0; index < table.Candidates.Length; index++)
        {
            var (low, high) = LimitsOf(index);
            if (Same(low, table.Good[index].LowOhms) && Same(high, table.Good[index].HighOhms))
                continue;
            checks.Add(table.FirstCheck + index);
            intervals.Add(table.Candidates[index].Mode.Shown(low, Math.Max(low, high)));
        }
    }

    /// <summary>Applies a fault in place of the one before; false when it can change no port.</summary>
    public bool Apply(WiringFault fault)
    {
        var changesLow = FaultChanges.AtLow(fault, wiring, table.Rest);
        var changesHigh = FaultChanges.AtHigh(fault, wiring, table.Rest);
        _reachedLow = table.IsReachedLow(changesLow);
        _reachedHigh = table.IsReachedHigh(changesHigh);
        if (_reachedLow)
            _low.Apply([.. changesLow, .. table.ControlsLow], table.Nodes);
        if (_reachedHigh)
            _high.Apply([.. changesHigh, .. table.ControlsHigh], table.Nodes);
        _groups = null;
        return _reachedLow || _reachedHigh;
    }

    /// <summary>Limits of a port under the fault in ohms, whatever the junctions do; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) LimitsOf(int index)
    {
        var (a, b) = (table.Candidates[index].A, table.Candidates[index].B);
        var (low, high) = table.Good[index];
        if (_reachedLow && (_low.Touches(a) || _low.Touches(b)))
            low = Floor(_low.Resistance(a, b, table.AnchoredLow(index)), a, b);
        if (_reachedHigh && (_high.Touches(a) || _high.Touches(b)))
            high = _high.Resistance(a, b, table.AnchoredHigh(index));
        return (low, high);
    }

    private double Floor(double low, int a, int b)
    {
        var junctions = table.Rest.Junctions;
        return low <= junctions.FloorOhms ? low : junctions.Floor(low, a, b, _groups ??= junctions.Groups(_low.PieceCount, _low.PieceOf));
    }

    private static bool Same(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-9 * Math.Abs(two);
}
