using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the diode tests of one set-up, on the networks that the resistances of the set-up were simulated on. One thread's own.</summary>
internal sealed class DiodeWorker(DiodeTable table, PortWorker ports) : ICheckWorker
{
    private readonly ulong[] _asked = new ulong[(table.Candidates.Length + 63) / 64];
    private readonly DiodeVolts _volts = new(table, ports.Faulty);

    /// <inheritdoc/>
    public void AddResponses(WiringFault fault, AlteredReadings readings)
    {
        if (!ports.Faulty.AreApplied)
            return;
        Ask(fault);
        for (var word = 0; word < _asked.Length; word++)
            for (var left = _asked[word]; left != 0; left &= left - 1)
                AddResponse((word * 64) + BitOperations.TrailingZeroCount(left), fault, readings);
    }

    private void AddResponse(int index, WiringFault fault, AlteredReadings readings)
    {
        var low = _volts.Least(index);
        var high = Math.Max(low, _volts.Most(index, fault, low));
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
                    DiodeTable.Set(_asked, port - first);
        table.AddOnWay(fault, _asked);
        table.AddRegrouped(ports.Faulty, _asked);
    }
}
