namespace Proveout.Engine.Electrical;

/// <summary>Solves the direct-current side: junctions and limits are piecewise linear, so it looks for modes that agree with the potentials.</summary>
/// <remarks>
/// Every mode that disagrees is changed at once; when that has not settled after some rounds only the first that disagrees is (as in
/// principal pivoting with least index; Murty, Linear Complementarity, 1988, chapter 4), up to a bound.
/// </remarks>
internal sealed class DirectNetwork(LiveCircuit circuit)
{
    private const int MostRounds = 60;
    private const int RoundsTogether = 25;

    // What counts as disagreement: a milliamp in reverse, a millivolt above.
    private const double ReverseAmperes = 1e-3;
    private const double AboveVolts = 1e-3;

    // A motor driver's output follows its feed this closely.
    private const double FollowsVolts = 0.01;

    // A source at its limit keeps a conductance so small that it alters no current worth a figure, and the network stays regular.
    private const double LimitingSiemens = 1e-6;

    private readonly PlacedPaths<double> _paths = new(circuit);
    private readonly LiveBranch[] _modal =
        [.. circuit.Branches.Where(branch => branch.Kind is LiveBranchKind.Junction or LiveBranchKind.Supply or LiveBranchKind.Held)];

    private readonly LiveBranch[] _held = [.. circuit.Branches.Where(branch => branch.Kind == LiveBranchKind.Held)];
    private readonly int[] _inputs = [.. circuit.Branches.Where(branch => branch.Kind == LiveBranchKind.Input).Select(branch => branch.Index)];
    private readonly double[] _injected = new double[circuit.NodeCount];
    private readonly double[] _injectedBefore = new double[circuit.NodeCount];
    private LivePoint? _solved;

    // What modes, supplies, coils and switches follow from: both nodes of each branch that has a mode, those of every port and of every coil.
    private readonly int[] _asked = circuit.Pattern.Above(Followed(circuit));
    private readonly int[] _rest = circuit.Pattern.Except(circuit.Pattern.Above(Followed(circuit)));

    /// <summary>Finds modes, and the potentials that modes, supplies, coils and switches follow from; false when none were found within the bound.</summary>
    public bool Solve(ChangedCircuit changed, LivePoint point)
    {
        SetPaths(changed, point);
        for (var round = 0; round < MostRounds; round++)
        {
            SolveOnce(changed, point);
            if (!Flip(changed, point, together: round < RoundsTogether))
                return true;
        }

        return false;
    }

    /// <summary>Finds the potentials that are left after <see cref="Solve"/>.</summary>
    public void SolveRest(LivePoint point)
    {
        _paths.Solver.SolveFurther(_rest, point.DcVolts);
        _solved = null;
    }

    private static IEnumerable<int> Followed(LiveCircuit circuit) => circuit.Branches
        .Where(branch => branch.Kind is LiveBranchKind.Junction or LiveBranchKind.Supply or LiveBranchKind.Held)
        .SelectMany(branch => (int[])[branch.A, branch.B])
        .Concat(circuit.Branches.Where(branch => branch.Port is not null).SelectMany(branch => (int[])[branch.Port!.Value.A, branch.Port.Value.B]))
        .Concat(circuit.Drives.SelectMany(drive => (int[])[drive.A, drive.B]));

    // What no mode moves stays through all rounds.
    private void SetPaths(ChangedCircuit changed, LivePoint point)
    {
        _paths.Place(changed, point);
        foreach (var source in circuit.MainsSources)
            _paths.Solver.Set(source, point.Tripped[source] ? 0 : changed.Siemens[source]);
        foreach (var input in _inputs)
            _paths.Solver.Set(input, point.InputSiemens[input]);
    }

    private void SolveOnce(ChangedCircuit changed, LivePoint point)
    {
        Array.Clear(_injected);
        foreach (var branch in _held)
            point.HeldVolts[branch.Index] = LiveBalance.FeedVolts(branch, point);
        foreach (var branch in _modal)
            Place(branch, changed.Siemens[branch.Index], point);
        // The same network and currents again: the potentials stand.
        if (ReferenceEquals(point, _solved) && !_paths.Solver.IsStale && _injected.AsSpan().SequenceEqual(_injectedBefore))
            return;
        _paths.Solver.Solve(_injected, _asked, _asked, point.DcVolts);
        _injected.CopyTo(_injectedBefore, 0);
        _solved = point;
    }

    private void Place(LiveBranch branch, double siemens, LivePoint point)
    {
        var (conducts, injects) = (branch.Kind, point.Mode[branch.Index]) switch
        {
            (_, LivePoint.Off) => (0, 0),
            (LiveBranchKind.Junction, _) => (siemens, siemens * branch.Volts),
            (_, LivePoint.On) => (siemens, siemens * LiveBalance.SetVolts(branch, point)),
            _ => (LimitingSiemens, branch.LimitAmperes),
        };
        _paths.Solver.Set(branch.Index, conducts);
        Inject(branch.A, branch.B, injects);
    }

    private void Inject(int into, int outOf, double amperes)
    {
        if (into >= 0)
            _injected[into] += amperes;
        if (outOf >= 0)
            _injected[outOf] -= amperes;
    }

    private bool Flip(ChangedCircuit changed, LivePoint point, bool together)
    {
        var flipped = false;
        foreach (var branch in _modal)
        {
            flipped |= branch.Kind == LiveBranchKind.Held && point.Mode[branch.Index] == LivePoint.On
                && Math.Abs(LiveBalance.FeedVolts(branch, point) - point.HeldVolts[branch.Index]) > FollowsVolts;
            var wanted = Wanted(branch, changed.Siemens[branch.Index], point);
            if (wanted == point.Mode[branch.Index])
                continue;
            point.Mode[branch.Index] = wanted;
            flipped = true;
            if (!together)
                break;
        }

        return flipped;
    }

    private static byte Wanted(LiveBranch branch, double siemens, LivePoint point)
    {
        var mode = point.Mode[branch.Index];
        var across = LiveBalance.Dc(point, branch.A) - LiveBalance.Dc(point, branch.B);
        if (branch.Kind == LiveBranchKind.Junction)
            return mode == LivePoint.On
                ? (across - branch.Volts) * siemens < -ReverseAmperes ? LivePoint.Off : LivePoint.On
                : across > branch.Volts + AboveVolts && siemens > 0 ? LivePoint.On : LivePoint.Off;
        if (!point.Alive[branch.Index])
            return LivePoint.Off;
        var set = LiveBalance.SetVolts(branch, point);
        var given = (set - across) * siemens;
        return mode switch
        {
            LivePoint.On when given > branch.LimitAmperes * 1.0001 => branch.ShutsOff ? LivePoint.Off : LivePoint.Limiting,
            // A supply's rectifier blocks; a motor driver's bridge carries current both ways.
            LivePoint.On when given < -ReverseAmperes && branch.Kind == LiveBranchKind.Supply => LivePoint.Off,
            LivePoint.Limiting when across > set + AboveVolts => LivePoint.On,
            LivePoint.Off when across < set - AboveVolts => LivePoint.On,
            _ => mode,
        };
    }
}
