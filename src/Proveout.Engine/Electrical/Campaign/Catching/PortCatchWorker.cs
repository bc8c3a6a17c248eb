using System.Numerics;
using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Finds which ports of one set-up surely catch a fault: those under whose response in <see cref="PortWorker"/> it is caught. One thread's own.</summary>
/// <param name="table">The ports.</param>
/// <param name="likewise">A worker of the same thread on the same network; each is asked only until the other is given a fault.</param>
/// <param name="atRest">The worker of the same thread with all controls at rest, given each fault first; null where no control is operated.</param>
internal sealed class PortCatchWorker(PortTable table, PortCatchWorker? likewise = null, PortCatchWorker? atRest = null) : ICatchWorker
{
    private readonly CatchPorts _ports = table.Catching;
    private readonly FaultyPorts _faulty = new(table, table.Catching.Low, table.Catching.High, likewise?._faulty);
    private readonly ulong[] _asked = new ulong[table.Low.WordCount];
    private readonly OperatedReach _operated = new();
    private readonly int _placeAtRest = atRest?._operated.Add(table) ?? -1;

    /// <summary>The ports of the set-up.</summary>
    public PortTable Table => table;

    /// <summary>The ports under the fault asked for last, at the limits at which it can be caught.</summary>
    public FaultyPorts Faulty => _faulty;

    /// <summary>A bit for every port at which it may be caught, those of diode tests included.</summary>
    public ReadOnlySpan<ulong> Asked => _asked;

    /// <inheritdoc/>
    public void AddCatching(WiringFault fault, List<int> checks)
    {
        if (atRest is not null && !atRest._operated.Reaches(_placeAtRest))
            return;
        _faulty.Leave();
        _operated.FindByWay(fault, _faulty);
        Apply(fault);
        if (!_faulty.AreApplied)
            return;
        Ask();
        for (var word = 0; word < _asked.Length; word++)
            for (var left = _asked[word]; left != 0; left &= left - 1)
                if ((word * 64) + BitOperations.TrailingZeroCount(left) is var index && index < table.Candidates.Length && IsCaught(index, fault))
                    checks.Add(table.FirstCheck + index);
    }

    private void Apply(WiringFault fault)
    {
        var isAtControl = IsAtControl(fault);
        if (_ports.MayRise && (isAtControl || Takes(_faulty.Low.ChangesOf(fault))))
            _faulty.Low.Apply(fault);
        if (_ports.MayFall && (isAtControl || Adds(_faulty.High.ChangesOf(fault))))
            _faulty.High.Apply(fault);
    }

    // Then what the control changes is another matter than in the sound machine.
    private bool IsAtControl(WiringFault fault)
    {
        if (!table.Low.HasControls)
            return false;
        for (var change = 0; change < fault.Changes.Count; change++)
            if (fault.Changes[change].ChangedElement is { } element && (table.Low.Operates(element) || table.High.Operates(element)))
                return true;
        return false;
    }

    private static bool Takes(List<EdgeChange> changes)
    {
        foreach (var change in changes)
            if (change.DeltaConductance.High < 0)
                return true;
        return false;
    }

    private static bool Adds(List<EdgeChange> changes)
    {
        foreach (var change in changes)
            if (change.DeltaConductance.High > 0)
                return true;
        return false;
    }

    private void Ask()
    {
        Array.Clear(_asked);
        _faulty.Low.AddTouched(_asked);
        _faulty.High.AddTouched(_asked);
        if (table.Low.HasControls)
            return;
        if (!_ports.Clipped.IsEmpty && _faulty.MovesPieces)
        {
            _ports.Clipped.AddShifted(_faulty.Low.Network.Pieces, _faulty.ChangedStrays, _asked);
            _ports.Clipped.Add(_faulty.ChangedStrays.MovedIslands, _asked);
        }

        if (_faulty.High.IsApplied && !_faulty.High.Network.HasPiecesAsBefore)
            _ports.Open.AddJoined(_faulty.High.Network.Pieces, _asked);
    }

    private bool IsCaught(int index, WiringFault fault)
    {
        var (mode, expected) = (table.ModeOf(index), table.ExpectationOf(index));
        var more = OneLimit.ShowsMore(mode, expected, LowOhms(index, expected.High));
        if (more is true)
            return true;
        var less = OneLimit.ShowsLess(mode, expected, HighOhms(index));
        return less is true || ((more is null || less is null) && Shown(index, fault).IsDisjointFrom(expected));
    }

    // Junctions and insulation only lower it: without them it is enough to know that it is not above what is expected.
    private double LowOhms(int index, double expectedOhms)
    {
        if (!_faulty.Low.IsApplied)
            return 0;
        var low = _faulty.Low.Alters(index, out var altered) ? altered : table.Low.Ports.Ohms(index);
        return low > expectedOhms ? _faulty.WithStrays(low, index) : low;
    }

    private double HighOhms(int index)
    {
        if (!_faulty.High.IsApplied)
            return double.PositiveInfinity;
        return _faulty.High.Alters(index, out var altered) ? altered : table.High.Ports.Ohms(index);
    }

    private ReadingInterval Shown(int index, WiringFault fault)
    {
        if (!_faulty.Low.IsApplied)
            _faulty.Low.Apply(fault);
        if (!_faulty.High.IsApplied)
            _faulty.High.Apply(fault);
        var (low, high) = table.Good[index];
        low = _faulty.Low.IsApplied ? _faulty.WithStrays(_faulty.Low.Network.Ohms(index), index) : low;
        high = _faulty.High.IsApplied ? _faulty.High.Network.Ohms(index) : high;
        return table.ModeOf(index).Shown(low, Math.Max(low, high));
    }
}
