namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of readings of resistance: sets of nodes and paths that leave them as they are. One thread's own.</summary>
internal sealed class VerdictGuards(PairSetUp setUp) : IPairGuards
{
    private readonly GuardSide _low = new(setUp.Low);
    private readonly GuardSide _high = new(setUp.High);
    private bool _isUnknown;

    /// <inheritdoc/>
    public void Apply(ReadOnlySpan<int> faults)
    {
        // What they do to a contact that the set-up operates stands in no graph of the network at rest.
        _isUnknown = faults.ContainsAny(setUp.FaultsAtControls);
        if (_isUnknown)
            return;
        _low.Apply(faults, setUp.Table.Low.Controls);
        _high.Apply(faults, setUp.Table.High.Controls);
    }

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, List<int> faults)
    {
        if (_isUnknown)
            return false;
        var (check, limits) = (setUp.Table.Candidates[index], setUp.LimitsOf(index));
        faults.AddRange(setUp.FaultsAtControls);
        return isCaught
            ? TryAddToTooLow(check, limits, faults) || TryAddToTooHigh(check, limits, faults)
            : TryAddToNotTooHigh(check, limits, faults) && TryAddToNotTooLow(check, limits, faults);
    }

    private bool TryAddToTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.SurelyTooLow > 0 && _high.TryAddPath(check, limits.SurelyTooLow, faults);

    // Where junctions or insulation could bring the reading down, they cannot while they lie off the one piece that a lead is on.
    private bool TryAddToTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsFinite(limits.SurelyTooHigh)
        && (setUp.Strays.LeastOhms(double.PositiveInfinity) >= limits.SurelyTooHigh
            ? _low.TryAddCut(check, setUp.Strays.MostSiemensFor(limits.SurelyTooHigh), faults)
            : _low.TryAddOpen(check, isInside => setUp.Strays.LeastOpenOhms(isInside) >= limits.SurelyTooHigh, faults));

    private bool TryAddToNotTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsPositiveInfinity(limits.NotTooHigh) || _low.TryAddPath(check, limits.NotTooHigh, faults);

    private bool TryAddToNotTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.NotTooLow <= 0 || _high.TryAddCut(check, 1 / limits.NotTooLow, faults);
}
