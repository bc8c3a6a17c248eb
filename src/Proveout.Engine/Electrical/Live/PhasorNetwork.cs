using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Solves the alternating-current side at the mains frequency.</summary>
/// <remarks>
/// A junction that sees more than its forward voltage is taken to conduct in both half-waves: current and what it does come out high, which is
/// the safe side. Sources of direct voltage are open; the capacitors beside them carry the alternating current.
/// </remarks>
internal sealed class PhasorNetwork(LiveCircuit circuit)
{
    private const int MostRounds = 12;

    // Below this a junction is left alone: hum across insulation does not count.
    private const double HumVolts = 3;

    private readonly PlacedPaths<Complex> _paths = new(circuit);
    private readonly LiveBranch[] _junctions = [.. circuit.Branches.Where(branch => branch.Kind == LiveBranchKind.Junction)];
    private readonly LiveBranch[] _others =
        [.. circuit.Branches.Where(branch => branch.Kind is LiveBranchKind.Capacitor or LiveBranchKind.Input or LiveBranchKind.Mains)];

    // What junctions, sources and switches follow from.
    private readonly int[] _asked = circuit.Pattern.Above(Followed(circuit));
    private readonly int[] _rest = circuit.Pattern.Except(circuit.Pattern.Above(Followed(circuit)));
    private readonly int[] _fed = circuit.Pattern.Above(circuit.MainsSources.SelectMany(source => (int[])[circuit.Branches[source].A, circuit.Branches[source].B]));
    private readonly Complex[] _injected = new Complex[circuit.NodeCount];
    private bool _isRestLeft;

    /// <summary>Finds the potentials that junctions, sources and switches follow from.</summary>
    public void Solve(ChangedCircuit changed, LivePoint point)
    {
        Array.Clear(point.AcClosed);
        SetPaths(changed, point);
        _isRestLeft = true;
        var potentials = new Complex[circuit.NodeCount];
        for (var round = 0; round < MostRounds; round++)
        {
            foreach (var junction in _junctions)
                _paths.Solver.Set(junction.Index, point.AcClosed[junction.Index] ? changed.Siemens[junction.Index] : 0);
            _paths.Solver.Solve(_injected, _fed, _asked, potentials);
            point.AcVolts = potentials;
            var driven = false;
            foreach (var junction in _junctions)
                if (!point.AcClosed[junction.Index] && changed.Siemens[junction.Index] > 0 && IsDriven(junction, point))
                    driven = point.AcClosed[junction.Index] = true;
            if (!driven)
                return;
        }
    }

    /// <summary>Finds the potentials that are left after <see cref="Solve"/>; nothing when none are.</summary>
    public void SolveRest(LivePoint point)
    {
        if (_isRestLeft)
            _paths.Solver.SolveFurther(_rest, point.AcVolts);
        _isRestLeft = false;
    }

    private static IEnumerable<int> Followed(LiveCircuit circuit) => circuit.Branches
        .Where(branch => branch.Kind == LiveBranchKind.Junction || circuit.Moves[branch.Index])
        .SelectMany(branch => (int[])[branch.A, branch.B])
        .Concat(circuit.Branches.Where(branch => branch.FedByMains && branch.Port is not null).SelectMany(branch => (int[])[branch.Port!.Value.A, branch.Port.Value.B]));

    private static bool IsDriven(LiveBranch junction, LivePoint point) =>
        (LiveBalance.Ac(point, junction.A) - LiveBalance.Ac(point, junction.B)).Magnitude * Math.Sqrt(2) > junction.Volts + HumVolts;

    // What no junction moves stays through all rounds.
    private void SetPaths(ChangedCircuit changed, LivePoint point)
    {
        Array.Clear(_injected);
        _paths.Place(changed, point);
        foreach (var branch in _others)
        {
            var admittance = changed.Siemens[branch.Index] <= 0 && branch.Kind == LiveBranchKind.Mains
                ? Complex.Zero
                : LiveBalance.AcAdmittance(branch, changed.Siemens[branch.Index], point, circuit.RadiansPerSecond);
            _paths.Solver.Set(branch.Index, admittance);
            if (branch.Kind == LiveBranchKind.Mains)
                Inject(branch, branch.Volts * admittance);
        }
    }

    private void Inject(LiveBranch branch, Complex amperes)
    {
        if (branch.A >= 0)
            _injected[branch.A] += amperes;
        if (branch.B >= 0)
            _injected[branch.B] -= amperes;
    }
}
