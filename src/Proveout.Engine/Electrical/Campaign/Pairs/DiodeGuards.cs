namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of diode tests. One thread's own.</summary>
/// <remarks>
/// The volts are at most what the current drops along any way from red to black, and at least what the piece of one lead, on its own, makes it
/// drop; so a way and paths hold them from above, cuts from below. Where these do not serve, all that hangs together with a lead does.
/// </remarks>
internal sealed class DiodeGuards(PairDiodes tests, PairRoom room) : IPairGuards
{
    private const double Rounding = 1e-9;

    private readonly GuardSide _low = room.SideOf(tests.Resistances.Low);
    private readonly GuardSide _high = room.SideOf(tests.Resistances.High);
    private readonly RegionGuards _region = new(tests);
    private int[] _faults = [];

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _faults = faults;
        _region.Apply(faults);
    }

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, bool thoroughly, List<int> faults)
    {
        _low.Take(_faults, ports: null);
        _high.Take(_faults, ports: null);
        var before = faults.Count;
        var check = tests.Table.Candidates[index];
        if (isCaught ? TryAddToCaught(check, faults) : TryAddToNotCaught(check, tests.Table.Ways[index], thoroughly, faults))
            return true;
        faults.RemoveRange(before, faults.Count - before);
        return _region.TryAddOverturning(index, isCaught, thoroughly, faults);
    }

    private bool TryAddToCaught(CandidateCheck check, List<int> faults)
    {
        var (mode, expected) = ((DiodeTestMode)check.Mode, check.Check.Expectation);
        var mostOhms = (((expected.Low - mode.ErrorVolts) / (1 + mode.RelativeError)) - Rounding) / mode.MostAmperes;
        return (double.IsFinite(mostOhms) && mostOhms > 0 && _high.TryAddPath(check, mostOhms, faults))
            || (double.IsFinite(expected.High) && _low.TryAddOpen(check, IsTooHigh, faults));

        bool IsTooHigh(Func<int, bool> isInside) =>
            mode.Shown(tests.Resistances.Strays.LeastOpenVolts(isInside, mode.LeastAmperes), double.PositiveInfinity).Low > expected.High + Rounding;
    }

    // While the way is whole its volts stand, and no better way is looked for.
    private bool TryAddToNotCaught(CandidateCheck check, VoltWay way, bool thoroughly, List<int> faults)
    {
        if (Array.Exists(_faults, fault => way.IsTouchedBy(tests.Places.Faults[fault])))
            return false;
        var (mode, expected) = ((DiodeTestMode)check.Mode, check.Check.Expectation);
        foreach (var element in way.Elements)
            faults.AddRange(tests.Places.Of(element));
        var least = double.IsPositiveInfinity(expected.Low) ? mode.LeastOpenVolts : expected.Low;
        return (way.Volts <= expected.High || _low.TryAddPath(check, expected.High / mode.LeastAmperes, faults))
            && (least <= 0 || (way.Volts >= least && _high.TryAddCut(check, mode.MostAmperes / least, thoroughly, faults)));
    }
}
