using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the diode tests of one set-up, on the networks that the resistances of the set-up were simulated on. One thread's own.</summary>
internal sealed class DiodeWorker(DiodeTable table, PortWorker ports) : ICheckWorker
{
    private readonly ulong[] _asked = new ulong[(table.Candidates.Length + 63) / 64];
    private readonly ChangedWay _way = new(table.Paths);

    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, AlteredReadings readings)
    {
        if (!ports.IsApplied)
            return;
        Ask(fault);
        for (var word = 0; word < _asked.Length; word++)
            for (var left = _asked[word]; left != 0; left &= left - 1)
                AddResponse((word * 64) + BitOperations.TrailingZeroCount(left), fault, readings);
    }

    private void AddResponse(int index, WiringFault fault, AlteredReadings readings)
    {
        var (low, high) = VoltsOf(index, fault);
        if (!PortWorker.Same(low, table.Good[index].LowVolts) || !PortWorker.Same(high, table.Good[index].HighVolts))
            readings.Add(table.FirstCheck + index, table.Candidates[index].Check.Expectation, DiodeTable.Mode.Shown(low, high));
    }

    // The candidates that the fault may alter: by resistance, by an element of their way, or by junctions on pieces that part or join.
    private void Ask(WiringFault fault)
    {
        Array.Clear(_asked);
        var first = table.PortOf(0);
        for (var word = first / 64; word < ports.Touched.Length; word++)
            for (var left = ports.Touched[word] | ports.Beside[word]; left != 0; left &= left - 1)
                if ((word * 64) + BitOperations.TrailingZeroCount(left) is var port && port >= first)
                    Ask(port - first);
        for (var change = 0; change < fault.Changes.Count; change++)
            if (fault.Changes[change].ChangedElement is { } element)
                foreach (var index in table.WaysThrough(element))
                    Ask(index);
        if (ports.MovesPieces && ports.ChangedStrays.IsRegrouped)
            foreach (var island in ports.Low.Network.TouchedIslands)
                foreach (var index in table.JoinedTo(island))
                    Ask(index);
    }

    private void Ask(int index) => _asked[index / 64] |= 1UL << (index % 64);

    // Limits of the volts of a port under the fault that was applied, as DiodeBounds says them; infinite when over range.
    private (double LowVolts, double HighVolts) VoltsOf(int index, WiringFault fault)
    {
        var port = table.PortOf(index);
        var altersLow = ports.Low.Alters(port, out var low);
        var altersHigh = ports.High.Alters(port, out var high);
        var lowOhms = altersLow ? low : table.Low.Ohms(port);
        var highOhms = altersHigh ? high : table.High.Ohms(port);
        var pieces = ports.Low.IsApplied ? ports.Low.Network.PiecesOf(port) : table.Low.IslandsOf(port);
        var least = ports.Strays.LeastVolts(lowOhms, pieces.OfA, pieces.OfB, DiodeTable.Mode.LeastAmperes);
        var most = highOhms * DiodeTable.Mode.MostAmperes;
        if (most > least)
            most = Math.Min(most, table.Ways[index].IsTouchedBy(fault) ? _way.Volts(table.Candidates[index].A, table.Candidates[index].B, fault.Changes, below: most) : table.Ways[index].Volts);
        return (least, Math.Max(least, most));
    }
}
