namespace Proveout.Engine.Numerics;

/// <summary>Finds an order in which to eliminate the nodes of a graph so that few new edges arise: always a node of least degree next.</summary>
/// <remarks>Minimum degree; George and Liu, SIAM Review 31 (1989) 1-19. Wiring is nearly a tree, so nearly nothing fills in.</remarks>
internal static class EliminationOrder
{
    /// <summary>Makes the order and the pattern of the factor.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="edges">Edges between two different nodes; parallel ones allowed.</param>
    /// <returns>The nodes in order of elimination, and for each node those of its neighbours that are eliminated later.</returns>
    public static (int[] Order, int[][] Later) MinimumDegree(int nodeCount, IEnumerable<(int A, int B)> edges)
    {
        var neighbours = Neighbours(nodeCount, edges);
        var queue = new PriorityQueue<int, (int Degree, int Node)>(nodeCount);
        for (var node = 0; node < nodeCount; node++)
            queue.Enqueue(node, (neighbours[node].Count, node));

        var order = new int[nodeCount];
        var later = new int[nodeCount][];
        for (var position = 0; position < nodeCount;)
        {
            queue.TryDequeue(out var node, out var priority);
            if (later[node] is not null || priority.Degree != neighbours[node].Count)
                continue;
            order[position++] = node;
            later[node] = [.. neighbours[node]];
            Eliminate(node, later[node], neighbours, queue);
        }

        return (order, later);
    }

    private static HashSet<int>[] Neighbours(int nodeCount, IEnumerable<(int A, int B)> edges)
    {
        var neighbours = new HashSet<int>[nodeCount];
        for (var node = 0; node < nodeCount; node++)
            neighbours[node] = [];
        foreach (var (a, b) in edges)
        {
            neighbours[a].Add(b);
            neighbours[b].Add(a);
        }

        return neighbours;
    }

    private static void Eliminate(int node, int[] around, HashSet<int>[] neighbours, PriorityQueue<int, (int Degree, int Node)> queue)
    {
        foreach (var neighbour in around)
        {
            neighbours[neighbour].Remove(node);
            foreach (var other in around)
                if (other != neighbour)
                    neighbours[neighbour].Add(other);
            queue.Enqueue(neighbour, (neighbours[neighbour].Count, neighbour));
        }
    }
}
