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

    private readonly SparseSolver<Complex> _solver = new(circuit.Position);
    private readonly LiveBranch[] _junctions = [.. circuit.Branches.Where(branch => branch.Kind == LiveBranchKind.Junction)];
    private readonly Complex[] _injected = new Complex[circuit.NodeCount];
    private Complex[] _admittances = [];

    /// <summary>Finds the potentials.</summary>
    public void Solve(ChangedCircuit changed, LivePoint point)
    {
        Array.Clear(point.AcClosed);
        if (_admittances.Length < changed.Ends.Length)
            _admittances = new Complex[changed.Ends.Length * 2];
        _solver.Begin(changed.Ends, LiveCircuit.LeakSiemens);
        for (var round = 0; round < MostRounds; round++)
        {
            point.AcVolts = SolveOnce(changed, point);
            var driven = false;
            foreach (var junction in _junctions)
                if (!point.AcClosed[junction.Index] && changed.Siemens[junction.Index] > 0 && IsDriven(junction, point))
                    driven = point.AcClosed[junction.Index] = true;
            if (!driven)
                return;
        }
    }

    private static bool IsDriven(LiveBranch junction, LivePoint point) =>
        (LiveBalance.Ac(point, junction.A) - LiveBalance.Ac(point, junction.B)).Magnitude * Math.Sqrt(2) > junction.Volts + HumVolts;

    private Complex[] SolveOnce(ChangedCircuit changed, LivePoint point)
    {
        Array.Clear(_injected);
        Array.Clear(_admittances);
        foreach (var branch in circuit.Branches)
        {
            var siemens = changed.Siemens[branch.Index];
            if (siemens <= 0 && branch.Kind is not (LiveBranchKind.Capacitor or LiveBranchKind.Input))
                continue;
            var admittance = LiveBalance.AcAdmittance(branch, siemens, point, circuit.RadiansPerSecond);
            _admittances[branch.Index] = admittance;
            if (branch.Kind == LiveBranchKind.Mains)
                Inject(branch, branch.Volts * admittance);
        }

        for (var join = 0; join < changed.Joins.Length; join++)
            _admittances[circuit.Branches.Length + join] = changed.Joins[join].Siemens;
        var potentials = new Complex[circuit.NodeCount];
        _solver.Solve(_admittances.AsSpan(0, changed.Ends.Length), _injected, potentials);
        return potentials;
    }

    private void Inject(LiveBranch branch, Complex amperes)
    {
        if (branch.A >= 0)
            _injected[branch.A] += amperes;
        if (branch.B >= 0)
            _injected[branch.B] -= amperes;
    }
}
