using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once at the checks of one set-up, one check at a time. One thread's own.</summary>
/// <remarks>The same readings as <see cref="PortWorker"/> gives for the merged fault.</remarks>
internal sealed class PairSetUpWorker(PairSetUp setUp, PairRoom room) : IPairWorker
{
    private readonly PairLimitWorker _low = new(setUp.Low, setUp.Faults);
    private readonly PairLimitWorker _high = new(setUp.High, setUp.Faults);
    private readonly ChangedStrays _changedStrays = room.StraysOf(setUp.Table.Rest.StrayEnds);
    private bool _hasStrays;

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _hasStrays = false;
        _low.Take(faults, setUp.Table.Low);
        _high.Take(faults, setUp.Table.High);
    }

    /// <inheritdoc/>
    public ReadingInterval Shown(int index)
    {
        var check = setUp.Table.Candidates[index];
        var low = WithStrays(LowOhms(check), check);
        var high = HighOhms(check);
        var (goodLow, goodHigh) = setUp.Table.Good[index];
        return PortWorker.Same(low, goodLow) && PortWorker.Same(high, goodHigh) ? check.Check.Expectation : check.Mode.Shown(low, Math.Max(low, high));
    }

    /// <inheritdoc/>
    public bool IsSurelyCaught(int index)
    {
        var (check, limits) = (setUp.Table.Candidates[index], setUp.LimitsOf(index));
        if (limits.SurelyTooLow > 0 && HighOhms(check) <= limits.SurelyTooLow)
            return true;
        var low = double.IsPositiveInfinity(limits.NotTooHigh) ? 0 : LowOhms(check);
        if (low <= limits.NotTooHigh && (limits.NotTooLow <= 0 || HighOhms(check) >= limits.NotTooLow))
            return false;
        return (low > 0 && setUp.Strays.LeastOhms(low) >= limits.SurelyTooHigh) || Shown(index).IsDisjointFrom(check.Check.Expectation);
    }

    private double LowOhms(CandidateCheck check) => _low.Network.Ohms(check.A, check.B);

    private double HighOhms(CandidateCheck check) => _high.Network.Ohms(check.A, check.B);

    private double WithStrays(double low, CandidateCheck check)
    {
        if (low < StrayPieces.NegligibleOhms)
            return low;
        var strays = _low.Network.HasPiecesAsBefore ? setUp.Table.Strays : _changedStrays.Of(_low.Network.Pieces, isSame: _hasStrays);
        _hasStrays = true;
        var (pieceOfA, pieceOfB) = (_low.Network.PieceOf(check.A), _low.Network.PieceOf(check.B));
        // At 500 V a junction may do anything.
        return check.Mode is InsulationMode && strays.AreNearJunctions(pieceOfA, pieceOfB) ? 0 : strays.LowerLimit(low, pieceOfA, pieceOfB);
    }
}
