namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of readings of resistance: sets of nodes and paths that leave them as they are. One thread's own.</summary>
internal sealed class VerdictGuards(PairSetUp setUp, PairRoom room) : IPairGuards
{
    private readonly GuardSide _low = room.SideOf(setUp.Low);
    private readonly GuardSide _high = room.SideOf(setUp.High);
    private int[] _faults = [];
    private bool _isUnknown;

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _faults = faults;
        // What they do to a contact that the set-up operates stands in no graph of the network at rest.
        _isUnknown = faults.AsSpan().ContainsAny(setUp.FaultsAtControls);
    }

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, bool thoroughly, List<int> faults)
    {
        if (_isUnknown)
            return false;
        _low.Apply(_faults, setUp.Table.Low.Controls);
        _high.Apply(_faults, setUp.Table.High.Controls);
        var (check, limits) = (setUp.Table.Candidates[index], setUp.LimitsOf(index));
        faults.AddRange(setUp.FaultsAtControls);
        return isCaught
            ? TryAddToTooLow(check, limits, faults) || TryAddToTooHigh(check, limits, thoroughly, faults)
            : TryAddToNotTooHigh(check, limits, faults) && TryAddToNotTooLow(check, limits, thoroughly, faults);
    }

    private bool TryAddToTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.SurelyTooLow > 0 && _high.TryAddPath(check, limits.SurelyTooLow, faults);

    // Where junctions or insulation could bring the reading down, they cannot while they lie off the one piece that a lead is on.
    private bool TryAddToTooHigh(CandidateCheck check, CheckLimits limits, bool thoroughly, List<int> faults) =>
        double.IsFinite(limits.SurelyTooHigh)
        && (setUp.Strays.LeastOhms(double.PositiveInfinity) >= limits.SurelyTooHigh
            ? _low.TryAddCut(check, setUp.Strays.MostSiemensFor(limits.SurelyTooHigh), thoroughly, faults)
            : _low.TryAddOpen(check, isInside => setUp.Strays.LeastOpenOhms(isInside) >= limits.SurelyTooHigh, faults));

    private bool TryAddToNotTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsPositiveInfinity(limits.NotTooHigh) || _low.TryAddPath(check, limits.NotTooHigh, faults);

    private bool TryAddToNotTooLow(CandidateCheck check, CheckLimits limits, bool thoroughly, List<int> faults) =>
        limits.NotTooLow <= 0 || _high.TryAddCut(check, 1 / limits.NotTooLow, thoroughly, faults);
}
