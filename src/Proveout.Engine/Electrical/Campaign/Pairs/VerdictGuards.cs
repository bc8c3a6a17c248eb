namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of readings of resistance: sets of nodes and paths that leave them as they are. One thread's own.</summary>
internal sealed class VerdictGuards(PairSetUp setUp, PairRoom room) : IPairGuards
{
    private const double Rounding = 1e-9;

    private readonly GuardSide _low = room.SideOf(setUp.Low);
    private readonly GuardSide _high = room.SideOf(setUp.High);
    private int[] _together = [];

    /// <inheritdoc/>
    public void Apply(int[] faults) => _together = faults;

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, bool thoroughly, List<int> faults)
    {
        _low.Take(_together, setUp.Table.Low);
        _high.Take(_together, setUp.Table.High);
        var (check, limits) = (setUp.Table.Candidates[index], setUp.LimitsOf(index));
        faults.AddRange(setUp.FaultsAtControls);
        return isCaught
            ? TryAddToTooLow(check, limits, faults) || TryAddToTooHigh(check, limits, thoroughly, faults)
            : TryAddToNotTooHigh(check, limits, faults) && TryAddToNotTooLow(check, limits, thoroughly, faults);
    }

    private bool TryAddToTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.SurelyTooLow > 0 && _high.TryAddPath(check, limits.SurelyTooLow, faults);

    // Where junctions or insulation could bring the reading down, they cannot while they lie off the one piece that a lead is on.
    private bool TryAddToTooHigh(CandidateCheck check, CheckLimits limits, bool thoroughly, List<int> faults)
    {
        if (double.IsPositiveInfinity(limits.SurelyTooHigh))
            return false;
        if (setUp.Strays.LeastOhms(double.PositiveInfinity) >= limits.SurelyTooHigh
            ? _low.TryAddCut(check, setUp.Strays.MostSiemensFor(limits.SurelyTooHigh), thoroughly, faults)
            : _low.TryAddOpen(check, isInside => setUp.Strays.LeastOpenOhms(isInside) >= limits.SurelyTooHigh, faults))
            return true;
        return thoroughly && TryAddToTooHighWithin(check, limits, faults);
    }

    // Junctions and insulation that touch the one piece on which both leads are; what is joined to it may bring more.
    private bool TryAddToTooHighWithin(CandidateCheck check, CheckLimits limits, List<int> faults)
    {
        var network = _low.Network;
        var piece = network.PieceOf(check.A);
        if (piece != network.PieceOf(check.B) || check.Mode is InsulationMode)
            return false;
        var strays = network.HasPiecesAsBefore ? setUp.Table.Strays : room.StraysOf(setUp.Table.Rest.StrayEnds).Of(network.Pieces);
        var mostSiemens = ((1 - Rounding) / limits.SurelyTooHigh) - (strays.LeakageOf(piece) * (1 + Rounding));
        if (strays.LeastVoltsOf(piece) / ElementBand.TestCurrentAmperes < limits.SurelyTooHigh || !_low.TryAddCut(check, mostSiemens, thoroughly: true, faults))
            return false;
        _low.AddJoining(piece, faults);
        return true;
    }

    private bool TryAddToNotTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsPositiveInfinity(limits.NotTooHigh) || _low.TryAddPath(check, limits.NotTooHigh, faults) || TryAddToNotTooHighByJunction(check, limits, faults);

    // While both leads and a junction are on one piece the meter may show no more than the junction holds.
    private bool TryAddToNotTooHighByJunction(CandidateCheck check, CheckLimits limits, List<int> faults)
    {
        var (network, most) = (_low.Network, limits.NotTooHigh * ElementBand.TestCurrentAmperes);
        if (limits.NotTooHigh < StrayPieces.NegligibleOhms || check.Mode is InsulationMode || network.PieceOf(check.A) != network.PieceOf(check.B))
            return false;
        int[] touching =
        [
            .. setUp.Table.Rest.StrayPaths.Junctions
                .Where(junction => junction.ForwardVolts <= most)
                .SelectMany(junction => new[] { junction.Anode, junction.Cathode })
                .Where(node => network.PieceOf(node) == network.PieceOf(check.A)),
        ];
        return touching.Length > 0
            && _low.TryAddWay(check.A, check.B, faults)
            && _low.TryAddWay(check.A, touching.MinBy(node => network.Ohms(check.A, node)), faults);
    }

    private bool TryAddToNotTooLow(CandidateCheck check, CheckLimits limits, bool thoroughly, List<int> faults) =>
        limits.NotTooLow <= 0 || _high.TryAddCut(check, 1 / limits.NotTooLow, thoroughly, faults);
}
