using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once at the diode tests of one set-up, one test at a time. One thread's own.</summary>
/// <remarks>The same readings as <see cref="DiodeWorker"/> gives for the merged fault.</remarks>
internal sealed class PairDiodeWorker(PairDiodes tests) : IPairWorker
{
    private readonly PairLimitWorker _low = new(tests.Resistances.Low, []);
    private readonly PairLimitWorker _high = new(tests.Resistances.High, []);
    private WiringFault[] _faults = [];
    private StrayPieces? _strays;

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _faults = Array.ConvertAll(faults, fault => tests.Places.Faults[fault]);
        _strays = null;
        _low.Apply(faults);
        _high.Apply(faults);
    }

    /// <inheritdoc/>
    public ReadingInterval Shown(int index)
    {
        var check = tests.Table.Candidates[index];
        var way = tests.Table.Ways[index];
        if (Array.Exists(_faults, way.IsTouchedBy))
            way = tests.Table.Paths.Best(check.A, check.B, [.. _faults.SelectMany(fault => fault.Changes)]);
        var pieces = (_low.Network.PieceOf(check.A), _low.Network.PieceOf(check.B));
        var (low, high) = tests.Table.Volts(index, _low.Network.Ohms(check.A, check.B), _high.Network.Ohms(check.A, check.B), Strays(), pieces, way);
        var (goodLow, goodHigh) = tests.Table.Good[index];
        return PortWorker.Same(low, goodLow) && PortWorker.Same(high, goodHigh) ? check.Check.Expectation : check.Mode.Shown(low, high);
    }

    /// <inheritdoc/>
    public bool IsSurelyCaught(int index) => Shown(index).IsDisjointFrom(tests.Table.Candidates[index].Check.Expectation);

    private StrayPieces Strays() => _strays ??= _low.Network.HasPiecesAsBefore
        ? tests.Resistances.Table.Strays
        : tests.Resistances.Table.StrayPaths.Of(_low.Network.PieceCount, _low.Network.PieceOfNodes());
}
