namespace Proveout.Engine.Electrical;

/// <summary>Limits of the volts of diode tests under a fault, as <see cref="DiodeBounds"/> says them. One thread's own.</summary>
/// <param name="table">The diode tests.</param>
/// <param name="faulty">The ports of their set-up under the fault.</param>
internal sealed class DiodeVolts(DiodeTable table, FaultyPorts faulty)
{
    private readonly ChangedWay _way = new(table.Paths);

    /// <summary>The lower limit; infinite when over range.</summary>
    public double Least(int index)
    {
        var port = table.PortOf(index);
        var lowOhms = faulty.Low.Alters(port, out var low) ? low : table.Low.Ohms(port);
        var (ofA, ofB) = faulty.Low.IsApplied ? faulty.Low.Network.PiecesOf(port) : table.Low.IslandsOf(port);
        return faulty.Strays.LeastVolts(lowOhms, ofA, ofB, DiodeTable.Mode.LeastAmperes);
    }

    /// <summary>The upper limit, or any above a lower limit that is not below it; infinite when over range.</summary>
    /// <param name="index">Index of the diode test.</param>
    /// <param name="fault">The fault that was applied.</param>
    /// <param name="least">The lower limit.</param>
    public double Most(int index, WiringFault fault, double least)
    {
        var port = table.PortOf(index);
        var most = (faulty.High.Alters(port, out var high) ? high : table.High.Ohms(port)) * DiodeTable.Mode.MostAmperes;
        if (most <= least)
            return most;
        var way = table.Ways[index];
        return Math.Min(most, way.IsTouchedBy(fault) ? _way.Volts(table.Candidates[index].A, table.Candidates[index].B, fault.Changes, below: most) : way.Volts);
    }
}
