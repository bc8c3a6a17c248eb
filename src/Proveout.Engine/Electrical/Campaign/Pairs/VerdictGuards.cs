namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of one set-up: sets of nodes and paths that leave them as they are while no other fault touches them. One thread's own.</summary>
internal sealed class VerdictGuards(PairSetUp setUp) : IPairGuards
{
    private const int FewNodes = 60;

    // Guards of pairs and of single faults serve triples too, where two others are made.
    private const int OthersTogether = 2;

    private readonly Side _low = new(setUp.Low);
    private readonly Side _high = new(setUp.High);

    /// <inheritdoc/>
    public void Apply(ReadOnlySpan<int> faults)
    {
        _low.Graph.Apply(faults, setUp.Table.Low.Controls);
        _high.Graph.Apply(faults, setUp.Table.High.Controls);
    }

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, List<int> faults)
    {
        var (check, limits) = (setUp.Table.Candidates[index], setUp.LimitsOf(index));
        return isCaught
            ? TryAddToTooLow(check, limits, faults) || TryAddToTooHigh(check, limits, faults)
            : TryAddToNotTooHigh(check, limits, faults) && TryAddToNotTooLow(check, limits, faults);
    }

    private bool TryAddToTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.SurelyTooLow > 0 && TryAddPath(_high, check, limits.SurelyTooLow, faults);

    private bool TryAddToTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsFinite(limits.SurelyTooHigh)
        && (setUp.Strays.LeastOhms(double.PositiveInfinity) >= limits.SurelyTooHigh
            ? TryAddCut(_low, check, setUp.Strays.MostSiemensFor(limits.SurelyTooHigh), faults)
            : TryAddOpen(check, limits, faults));

    private bool TryAddToNotTooHigh(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        double.IsPositiveInfinity(limits.NotTooHigh) || TryAddPath(_low, check, limits.NotTooHigh, faults);

    private bool TryAddToNotTooLow(CandidateCheck check, CheckLimits limits, List<int> faults) =>
        limits.NotTooLow <= 0 || TryAddCut(_high, check, 1 / limits.NotTooLow, faults);

    private static bool TryAddPath(Side side, CandidateCheck check, double mostOhms, List<int> faults)
    {
        if (!side.Path.TryFind(check.A, check.B, mostOhms))
            return false;
        side.Path.AddRaising(faults, OthersTogether);
        return true;
    }

    // The smaller the set the fewer faults touch it: first a small one round either lead.
    private static bool TryAddCut(Side side, CandidateCheck check, double mostSiemens, List<int> faults)
    {
        if (mostSiemens < 0)
            return false;
        foreach (var mostNodes in new[] { FewNodes, int.MaxValue })
            if (side.Cut.TryFind(check.A, check.B, mostSiemens, mostNodes) || side.Cut.TryFind(check.B, check.A, mostSiemens, mostNodes))
            {
                side.Cut.AddCrossing(faults);
                return true;
            }

        if (!side.Layers.TryFind(check.A, check.B, 1 / mostSiemens))
            return false;
        side.Layers.AddCrossing(faults);
        return true;
    }

    // Junctions or insulation could bring the reading down; but not while they lie off the one piece that a lead is on.
    private bool TryAddOpen(CandidateCheck check, CheckLimits limits, List<int> faults)
    {
        foreach (var (from, to) in new[] { (check.A, check.B), (check.B, check.A) })
            if (_low.Cut.TryFind(from, to, 0, int.MaxValue) && setUp.Strays.LeastOpenOhms(_low.Cut.Holds) >= limits.SurelyTooHigh)
            {
                _low.Cut.AddCrossing(faults);
                return true;
            }

        return false;
    }

    private sealed class Side(PairLimit limit)
    {
        public GuardGraph Graph { get; } = new(limit);

        public CutGuard Cut => field ??= new CutGuard(Graph);

        public LayerGuard Layers => field ??= new LayerGuard(Graph);

        public PathGuard Path => field ??= new PathGuard(Graph);
    }
}
