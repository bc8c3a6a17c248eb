using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Finds which diode tests of one set-up surely catch a fault: those under whose response in <see cref="DiodeWorker"/> it is caught. One thread's own.</summary>
internal sealed class DiodeCatchWorker(DiodeTable table, PortCatchWorker ports) : ICatchWorker
{
    private readonly ulong[] _asked = new ulong[(table.Candidates.Length + 63) / 64];
    private readonly DiodeVolts _volts = new(table, ports.Faulty);

    /// <inheritdoc/>
    public void AddCatching(WiringFault fault, List<int> checks)
    {
        if (!ports.Faulty.AreApplied)
            return;
        Ask(fault);
        for (var word = 0; word < _asked.Length; word++)
            for (var left = _asked[word]; left != 0; left &= left - 1)
                if ((word * 64) + BitOperations.TrailingZeroCount(left) is var index && IsCaught(index, fault))
                    checks.Add(table.FirstCheck + index);
    }

    private void Ask(WiringFault fault)
    {
        Array.Clear(_asked);
        var first = table.PortOf(0);
        for (var word = first / 64; word < ports.Asked.Length; word++)
            for (var left = ports.Asked[word]; left != 0; left &= left - 1)
                if ((word * 64) + BitOperations.TrailingZeroCount(left) is var port && port >= first)
                    DiodeTable.Set(_asked, port - first);
        // A way that only loses what it leads along lets through no more.
        if (ports.Faulty.High.IsApplied)
            table.AddOnWay(fault, _asked);
        table.AddRegrouped(ports.Faulty, _asked);
    }

    private bool IsCaught(int index, WiringFault fault)
    {
        // A diode test has one range, on which what it shows at least goes by the lower limit alone, and what it shows at most by the upper.
        var expected = table.Candidates[index].Check.Expectation;
        return (ports.Faulty.Low.IsApplied && double.IsFinite(expected.High) && OneLimit.ShowsMore(DiodeTable.Mode, expected, _volts.Least(index)) is true)
            || (ports.Faulty.High.IsApplied && OneLimit.ShowsLess(DiodeTable.Mode, expected, _volts.Most(index, fault, 0)) is true);
    }
}
