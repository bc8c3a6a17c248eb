using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the ports of one set-up. One thread's own.</summary>
/// <param name="table">The ports.</param>
/// <param name="likewise">A worker of the same thread on the same network; each is asked only until the other is given a fault.</param>
/// <param name="atRest">The worker of the same thread with all controls at rest, given each fault first; null where no control is operated.</param>
internal sealed class PortWorker(PortTable table, PortWorker? likewise = null, PortWorker? atRest = null) : ICheckWorker
{
    private readonly FaultyPorts _faulty = new(table, table.Low, table.High, likewise?._faulty);
    private readonly ulong[] _touched = new ulong[table.Low.WordCount];
    private readonly ulong[] _beside = new ulong[table.Low.WordCount];
    private readonly OperatedReach _operated = new();
    private readonly int _placeAtRest = atRest?._operated.Add(table) ?? -1;

    /// <summary>A bit for every port whose resistance the fault whose responses were added last may alter, those of diode tests included.</summary>
    public ReadOnlySpan<ulong> Touched => _touched;

    /// <summary>A bit for every port beside which other junctions and insulation may lie now.</summary>
    public ReadOnlySpan<ulong> Beside => _beside;

    /// <summary>The ports of the set-up.</summary>
    public PortTable Table => table;

    /// <summary>The ports under the fault applied last.</summary>
    public FaultyPorts Faulty => _faulty;

    private LimitWorker Low => _faulty.Low;

    private LimitWorker High => _faulty.High;

    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, AlteredReadings readings)
    {
        _faulty.Leave();
        if ((atRest is { _faulty.AreApplied: true } && !IsConcerned(atRest)) || !Apply(fault))
            return;
        _operated.Find(fault, _faulty);
        Array.Clear(_touched);
        Array.Clear(_beside);
        Low.AddTouched(_touched);
        High.AddTouched(_touched);
        if (_faulty.MovesPieces)
            AddBeside();
        for (var word = 0; word < _touched.Length; word++)
            for (var left = _touched[word] | _beside[word]; left != 0; left &= left - 1)
                if (BitOperations.TrailingZeroCount(left) is var bit && (word * 64) + bit is var index && index < table.Candidates.Length)
                    AddResponse(index, (_touched[word] >> bit & 1) != 0, readings);
    }

    private void AddBeside()
    {
        var moved = _faulty.ChangedStrays.MovedIslands;
        if (table.Low.HasControls)
        {
            table.Low.Masks.Add(moved, _touched);
            return;
        }

        table.Loads.AddShifted(Low.Network.Pieces, _faulty.ChangedStrays, _beside);
        table.Loads.Add(moved, _beside);
        table.Open.AddJoined(Low.Network.Pieces, _beside);
    }

    // A fault that concerns no port, whether contacts are open or closed, and leaves the junctions and the insulation of their pieces and of the contacts
    // alone while the control is at rest, leaves both alone with the control operated.
    private bool IsConcerned(PortWorker atRest)
    {
        if (atRest._operated.Reaches(_placeAtRest))
            return true;
        if (!atRest._operated.IsNear(_placeAtRest))
            return false;
        var (pieces, islands) = (atRest.Low.Network.Pieces, table.Rest.Low.Network.Islands);
        foreach (var node in table.Low.Anchored)
            if (pieces.Of(node) is > 0 and var piece && !atRest._faulty.ChangedStrays.Keeps(islands.Of(node), piece))
                return true;
        return false;
    }

    /// <summary>Applies a fault in place of the one before; false when it can alter no port.</summary>
    public bool Apply(WiringFault fault)
    {
        _faulty.Leave();
        return Low.Apply(fault) | High.Apply(fault);
    }

    /// <summary>Limits of every port without a fault, with what the set-up itself changes.</summary>
    public (double LowOhms, double HighOhms)[] LimitsAtRest()
    {
        _faulty.ApplyControls();
        return [.. table.Candidates.Select((_, index) => LimitsOf(index))];
    }

    /// <summary>Limits of a port under the fault in ohms, whatever junctions and insulation do; infinite when over range.</summary>
    public (double LowOhms, double HighOhms) LimitsOf(int index) => AlteredLimits(index, out var low, out var high) ? (low, high) : table.Good[index];

    private void AddResponse(int index, bool isTouched, AlteredReadings readings)
    {
        double low, high;
        if (isTouched || Low.Joins(index) ? AlteredLimits(index, out low, out high) : HasOtherStrays(index, out low, out high))
            readings.Add(table.FirstCheck + index, table.ExpectationOf(index), table.ModeOf(index).Shown(low, Math.Max(low, high)));
    }

    private bool AlteredLimits(int index, out double low, out double high)
    {
        var altersLow = Low.Alters(index, out var alteredLow);
        var altersHigh = High.Alters(index, out var alteredHigh);
        (low, high) = (alteredLow, alteredHigh);
        if (!altersLow && !altersHigh)
            return false;
        var (goodLow, goodHigh) = table.Good[index];
        low = !altersLow ? goodLow : _faulty.WithStrays(low, index);
        high = altersHigh ? high : goodHigh;
        return !table.IsSame(index, low, goodLow) || !table.IsSame(index, high, goodHigh);
    }

    // The resistances of the port are as they were.
    private bool HasOtherStrays(int index, out double low, out double high)
    {
        var (goodLow, goodHigh) = table.Good[index];
        (low, high) = (_faulty.WithStrays(table.Low.Ports.Ohms(index), index), goodHigh);
        return !table.IsSame(index, low, goodLow);
    }

    /// <summary>True when two values are the same to a share of either, or both infinite.</summary>
    /// <remarks>Either may be infinite: the smaller of the two is the measure, so that an opened path never counts as the same.</remarks>
    public static bool Same(double one, double two, double share = 1e-9) => one.Equals(two) || Math.Abs(one - two) <= share * Math.Min(one, two);
}
