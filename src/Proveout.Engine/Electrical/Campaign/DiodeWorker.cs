using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the diode tests of one set-up. One thread's own.</summary>
internal sealed class DiodeWorker(DiodeTable table) : ICheckWorker
{
    private readonly LimitWorker _low = new(table.Low);
    private readonly LimitWorker _high = new(table.High);
    private StrayPieces _strays = table.Strays;
    private WiringFault? _fault;

    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, List<int> checks, List<ReadingInterval> intervals)
    {
        if (!Apply(fault))
            return;
        for (var index = 0; index < table.Candidates.Length; index++)
        {
            var (low, high) = VoltsOf(index);
            if (Same(low, table.Good[index].LowVolts) && Same(high, table.Good[index].HighVolts))
                continue;
            checks.Add(table.FirstCheck + index);
            intervals.Add(table.Candidates[index].Mode.Shown(low, high));
        }
    }

    /// <summary>Applies a fault in place of the one before; false when it can alter no port.</summary>
    public bool Apply(WiringFault fault)
    {
        _fault = fault;
        var isReached = _low.Apply(fault) | _high.Apply(fault);
        _strays = !_low.IsApplied || _low.Network.HasPiecesAsBefore
            ? table.Strays
            : table.StrayPaths.Of(_low.Network.PieceCount, _low.Network.PieceOfNodes());
        return isReached;
    }

    /// <summary>Limits of the volts of a port under the fault; infinite when over range.</summary>
    public (double LowVolts, double HighVolts) VoltsOf(int index)
    {
        var altersLow = _low.Alters(index, out var low);
        var altersHigh = _high.Alters(index, out var high);
        var way = table.Ways[index];
        var isWayTouched = way.IsTouchedBy(_fault!);
        if (!altersLow && !altersHigh && !isWayTouched && _strays == table.Strays)
            return table.Good[index];
        return table.Volts(
            index,
            altersLow ? low : table.Low.Ports.Ohms(index),
            altersHigh ? high : table.High.Ports.Ohms(index),
            _strays,
            _low.IsApplied ? _low.Network.PiecesOf(index) : table.Low.Ports.IslandsOf(index),
            isWayTouched ? table.Paths.Best(table.Candidates[index].A, table.Candidates[index].B, _fault!.Changes) : way);
    }

    private static bool Same(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-9 * Math.Min(one, two);
}
