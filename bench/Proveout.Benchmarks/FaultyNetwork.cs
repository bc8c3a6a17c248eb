using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>The resistors that a fault leaves in one state of the machine, at one limit.</summary>
internal static class FaultyNetwork
{
    public static Edge[] Edges(StateNetwork state, WiringFault fault, bool atHigh)
    {
        var network = (atHigh ? state.High : state.Low).Network;
        var edges = Enumerable.Range(0, network.EdgeCount).Select(network.EdgeOf).ToList();
        var changes = new List<EdgeChange>();
        new FaultChanges(state, atHigh).Add(fault, changes);
        foreach (var change in changes)
            if (change.Edge < 0)
                edges.Add(new Edge(change.A, change.B, (double)change.DeltaConductance));
            else
                edges[change.Edge] = edges[change.Edge] with { Conductance = (double)(edges[change.Edge].Conductance + change.DeltaConductance) };
        return [.. edges.Where(edge => edge.Conductance > 0)];
    }
}
