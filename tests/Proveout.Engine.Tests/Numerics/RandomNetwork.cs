using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>A random network of resistors over ten decades, with random changes of it.</summary>
/// <param name="NodeCount">Number of nodes.</param>
/// <param name="Edges">Its resistors.</param>
/// <param name="Taken">Indices of resistors that the change takes away, each once.</param>
/// <param name="Set">Other resistors that it gives another conductance, at most once each.</param>
/// <param name="Added">Resistors that it adds.</param>
internal sealed record RandomNetwork(int NodeCount, Edge[] Edges, int[] Taken, (int Edge, double Conductance)[] Set, Edge[] Added)
{
    private const int Nodes = 12;

    private static readonly Gen<double> Conductance = Gen.Choose(-7000, 3000).Select(exponent => Math.Pow(10, exponent / 1000.0));

    private static readonly Gen<Edge> AnyEdge =
        from a in Gen.Choose(0, Nodes - 1)
        from step in Gen.Choose(1, Nodes - 1)
        from conductance in Conductance
        select new Edge(a, (a + step) % Nodes, conductance);

    public static Arbitrary<RandomNetwork> Any { get; } = Arb.From(
        from count in Gen.Choose(6, 18)
        from edges in AnyEdge.ArrayOf(count)
        from order in Gen.Shuffle(Enumerable.Range(0, count).ToArray())
        from taken in Gen.Choose(0, 4)
        from set in Gen.Choose(0, 2)
        from conductances in Conductance.ArrayOf(set)
        from addedCount in Gen.Choose(taken + set == 0 ? 1 : 0, 3)
        from added in AnyEdge.ArrayOf(addedCount)
        select new RandomNetwork(
            Nodes,
            edges,
            [.. order.Take(taken)],
            [.. order.Skip(taken).Take(set).Zip(conductances).Where(item => item.Second != edges[item.First].Conductance)],
            added));

    /// <summary>The network as it is.</summary>
    public ResistorNetwork Network => new(NodeCount, Edges);

    /// <summary>The resistors after the change.</summary>
    public Edge[] EdgesAfter =>
    [
        .. Edges.Select((edge, index) => Array.Find(Set, item => item.Edge == index) is { Conductance: > 0 } set ? edge with { Conductance = set.Conductance } : edge)
            .Where((_, index) => !Taken.Contains(index)),
        .. Added,
    ];

    /// <summary>The change.</summary>
    public List<EdgeChange> Changes =>
    [
        .. Taken.Select(index => EdgeChange.TakeAway(index, Edges[index])),
        .. Set.Select(item => EdgeChange.Set(item.Edge, Edges[item.Edge], item.Conductance)),
        .. Added.Select(edge => EdgeChange.Add(edge.A, edge.B, edge.Conductance)),
    ];
}
