using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once at the diode tests of one set-up, one test at a time. One thread's own.</summary>
/// <remarks>The same readings as <see cref="DiodeWorker"/> gives for the merged fault.</remarks>
internal sealed class PairDiodeWorker(PairDiodes tests, PairRoom room) : IPairWorker
{
    private readonly PairLimitWorker _low = new(tests.Resistances.Low, tests.Resistances.Faults);
    private readonly PairLimitWorker _high = new(tests.Resistances.High, tests.Resistances.Faults);
    private readonly ChangedWay _way = new(tests.Table.Paths);
    private WiringFault[] _faults = [];
    private readonly ChangedStrays _changedStrays = room.StraysOf(tests.Resistances.Table.Rest.StrayEnds);
    private bool _hasStrays;

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _faults = Array.ConvertAll(faults, fault => tests.Places.Faults[fault]);
        _hasStrays = false;
        _low.Take(faults, ports: null);
        _high.Take(faults, ports: null);
    }

    /// <inheritdoc/>
    public ReadingInterval Shown(int index)
    {
        var check = tests.Table.Candidates[index];
        var pieces = (_low.Network.PieceOf(check.A), _low.Network.PieceOf(check.B));
        var (low, high) = DiodeBounds.Of(
            DiodeTable.Mode, _low.Network.Ohms(check.A, check.B), _high.Network.Ohms(check.A, check.B), Strays(), pieces, WayVolts(index));
        var (goodLow, goodHigh) = tests.Table.Good[index];
        return PortWorker.Same(low, goodLow) && PortWorker.Same(high, goodHigh) ? check.Check.Expectation : check.Mode.Shown(low, high);
    }

    /// <inheritdoc/>
    public bool IsSurelyCaught(int index) => Shown(index).IsDisjointFrom(tests.Table.Candidates[index].Check.Expectation);

    private double WayVolts(int index)
    {
        var check = tests.Table.Candidates[index];
        if (!Array.Exists(_faults, tests.Table.Ways[index].IsTouchedBy))
            return tests.Table.Ways[index].Volts;
        return _way.Volts(check.A, check.B, [.. _faults.SelectMany(fault => fault.Changes)]);
    }

    private StrayPieces Strays()
    {
        var strays = _low.Network.HasPiecesAsBefore ? tests.Resistances.Table.Strays : _changedStrays.Of(_low.Network.Pieces, isSame: _hasStrays);
        _hasStrays = true;
        return strays;
    }
}
