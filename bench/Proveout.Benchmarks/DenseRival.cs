using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>The general-purpose way: the nodal conductance matrix of each connected piece that holds a port, factored by MathNet's dense LU, in plain double.</summary>
/// <remarks>It is timed, not trusted: over twelve decades of conductance plain double loses what insulation says.</remarks>
internal static class DenseRival
{
    /// <summary>Readings of all ports of a set-up.</summary>
    public static double[] Readings(int nodeCount, Edge[] edges, CandidateCheck[] ports)
    {
        var islands = new Islands(nodeCount, edges.Select(edge => (edge.A, edge.B)));
        var ofIsland = edges.ToLookup(edge => islands.Of(edge.A));
        var transfers = new Dictionary<int, Matrix<double>>();
        var row = new int[nodeCount];
        return [.. ports.Select(Reading)];

        double Reading(CandidateCheck port)
        {
            var island = islands.Of(port.A);
            if (island != islands.Of(port.B))
                return double.PositiveInfinity;
            if (!transfers.TryGetValue(island, out var transfer))
                transfers[island] = transfer = Transfers(islands.Members(island), ofIsland[island], row);
            var (a, b) = (row[port.A], row[port.B]);
            return transfer[a, a] + transfer[b, b] - transfer[a, b] - transfer[b, a];
        }
    }

    // One siemens to ground at the first node makes the matrix regular and changes no reading.
    private static Matrix<double> Transfers(int[] members, IEnumerable<Edge> edges, int[] row)
    {
        for (var index = 0; index < members.Length; index++)
            row[members[index]] = index;
        var conductance = Matrix<double>.Build.Dense(members.Length, members.Length);
        conductance[0, 0] = 1;
        foreach (var edge in edges)
        {
            var (a, b) = (row[edge.A], row[edge.B]);
            conductance[a, a] += edge.Conductance;
            conductance[b, b] += edge.Conductance;
            conductance[a, b] -= edge.Conductance;
            conductance[b, a] -= edge.Conductance;
        }

        return conductance.LU().Inverse();
    }
}
