using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the diode tests of one set-up, on the networks that the resistances of the set-up were simulated on. One thread's own.</summary>
internal sealed class DiodeWorker(DiodeTable table, PortWorker ports) : ICheckWorker
{
    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, List<int> checks, List<ReadingInterval> intervals)
    {
        if (!ports.IsApplied)
            return;
        for (var index = 0; index < table.Candidates.Length; index++)
        {
            var (low, high) = VoltsOf(index, fault);
            if (PortWorker.Same(low, table.Good[index].LowVolts) && PortWorker.Same(high, table.Good[index].HighVolts))
                continue;
            checks.Add(table.FirstCheck + index);
            intervals.Add(table.Candidates[index].Mode.Shown(low, high));
        }
    }

    /// <summary>Limits of the volts of a port under the fault that was applied; infinite when over range.</summary>
    public (double LowVolts, double HighVolts) VoltsOf(int index, WiringFault fault)
    {
        var port = table.PortOf(index);
        var altersLow = ports.Low.Alters(port, out var low);
        var altersHigh = ports.High.Alters(port, out var high);
        var way = table.Ways[index];
        var isWayTouched = way.IsTouchedBy(fault);
        if (!altersLow && !altersHigh && !isWayTouched && !MovesJunctions(port))
            return table.Good[index];
        return table.Volts(
            index,
            altersLow ? low : table.Low.Ohms(port),
            altersHigh ? high : table.High.Ohms(port),
            ports.Strays,
            ports.Low.IsApplied ? ports.Low.Network.PiecesOf(port) : table.Low.IslandsOf(port),
            isWayTouched ? table.Paths.Best(table.Candidates[index].A, table.Candidates[index].B, fault.Changes) : way);
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
