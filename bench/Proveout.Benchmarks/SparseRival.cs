using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>The engine's own sparse factor, made anew for each fault.</summary>
internal static class SparseRival
{
    /// <summary>Readings of all ports of a set-up.</summary>
    public static double[] Readings(int nodeCount, Edge[] edges, CandidateCheck[] ports)
    {
        var network = new ResistorNetwork(nodeCount, edges);
        return [.. ports.Select(port => network.Resistance(port.A, port.B))];
    }
}
