using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>The way of a general sparse solver: order and pattern found once for a state of the machine, the whole network factored anew for each fault in plain double, and one solve for each check.</summary>
/// <remarks>It is timed, not trusted: over twelve decades of conductance plain double loses what insulation says.</remarks>
internal static class RefactoredRival
{
    // Makes islands without a source regular; a teraohm.
    private const double LeakSiemens = 1e-12;

    /// <summary>Finds order and pattern for a state at one limit.</summary>
    public static RivalReadings Prepare(WiringNetwork wiring, StateNetwork state, bool atHigh)
    {
        var network = (atHigh ? state.High : state.Low).Network;
        Edge[] edges = [.. Enumerable.Range(0, network.EdgeCount).Select(network.EdgeOf)];
        var nodes = wiring.Nodes.Count;
        var (order, _) = EliminationOrder.MinimumDegree(nodes, edges.Select(edge => (edge.A, edge.B)));
        var position = new int[nodes];
        for (var place = 0; place < nodes; place++)
            position[order[place]] = place;
        var pattern = new SparsePattern(position, [.. edges.Select(edge => (edge.A, edge.B))]);
        var (injected, potentials) = (new double[nodes], new double[nodes]);
        return (fault, ports) =>
        {
            var solver = Factor(fault);
            return [.. ports.Select(port => Reading(solver, port))];
        };

        SparseSolver<double> Factor(WiringFault fault)
        {
            var changes = new List<EdgeChange>();
            new FaultChanges(state, atHigh).Add(fault, changes);
            var siemens = Array.ConvertAll(edges, edge => edge.Conductance);
            foreach (var change in changes.Where(change => change.Edge >= 0))
                siemens[change.Edge] = Math.Max(0, (double)(siemens[change.Edge] + change.DeltaConductance));
            var solver = new SparseSolver<double>(pattern, LeakSiemens);
            for (var branch = 0; branch < siemens.Length; branch++)
                solver.Set(branch, siemens[branch]);
            solver.Join([.. changes.Where(change => change.Edge < 0).Select(change => (change.A, change.B, (double)change.DeltaConductance))]);
            return solver;
        }

        double Reading(SparseSolver<double> solver, CandidateCheck port)
        {
            (injected[port.A], injected[port.B]) = (1, -1);
            solver.Solve(injected, potentials);
            (injected[port.A], injected[port.B]) = (0, 0);
            return potentials[port.A] - potentials[port.B];
        }
    }
}
