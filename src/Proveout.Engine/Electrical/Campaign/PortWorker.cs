using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the ports of one set-up. One thread's own.</summary>
internal sealed class PortWorker(PortTable table, WiringNetwork wiring)
{
    private readonly ChangedNetwork _low = new(table.Rest.Low.Network);
    private readonly ChangedNetwork _high = new(table.Rest.High.Network);

    /// <summary>Adds the checks that a fault changes, with what they may then show.</summary>
    public void AddResponses(WiringFault fault, List<int> checks, List<ReadingInterval> intervals)
    {
        var changesLow = FaultChanges.AtLow(fault, wiring, table.Rest);
        var changesHigh = FaultChanges.AtHigh(fault, wiring, table.Rest);
        var reachedLow = table.IsReachedLow(changesLow);
        var reachedHigh = table.IsReachedHigh(changesHigh);
        if (!reachedLow && !reachedHigh)
            return;

        if (reachedLow)
            _low.Apply([.. changesLow, .. table.ControlsLow], table.Nodes);
        if (reachedHigh)
            _high.Apply([.. changesHigh, .. table.ControlsHigh], table.Nodes);
        StrayPieces? strays = null;
        for (var index = 0; index < table.Candidates.Length; index++)
        {
            var candidate = table.Candidates[index];
            var (a, b) = (candidate.A, candidate.B);
            var touchedLow = reachedLow && (_low.Touches(a) || _low.Touches(b));
            var touchedHigh = reachedHigh && (_high.Touches(a) || _high.Touches(b));
            if (!touchedLow && !touchedHigh)
                continue;
            var (low, high) = table.Good[index];
            if (touchedLow)
            {
                low = _low.Resistance(a, b, table.AnchoredLow(index));
                if (low >= StrayPieces.NegligibleOhms)
                    low = (strays ??= table.Rest.StrayPaths.Of(_low.PieceCount, _low.PieceOf)).LowerLimit(low, a, b);
            }

            if (touchedHigh)
                high = _high.Resistance(a, b, table.AnchoredHigh(index));
            if (Same(low, table.Good[index].LowOhms) && Same(high, table.Good[index].HighOhms))
                continue;
            checks.Add(table.FirstCheck + index);
            intervals.Add(candidate.Mode.Shown(low, Math.Max(low, high)));
        }
    }

    private static bool Same(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-9 * Math.Abs(two);
}
