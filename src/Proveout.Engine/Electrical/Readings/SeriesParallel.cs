namespace Proveout.Engine.Electrical;

/// <summary>Says whether a port's network is made of series and parallel connections only (Duffin, Journal of Mathematical Analysis and Applications 10 (1965) 303-318).</summary>
/// <remarks>
/// In such a network every element's current has the same direction whatever the values, and volts of elements in series and currents of elements
/// in parallel add. So the port's voltage rises with every resistance and every forward voltage, whichever junctions conduct.
/// </remarks>
internal static class SeriesParallel
{
    /// <summary>True when merging elements in series and in parallel, and dropping loose ends, leaves at most one element between the two nodes.</summary>
    public static bool IsPort(IEnumerable<(int A, int B)> elements, int red, int black)
    {
        var neighbours = Neighbours(elements);
        KeepIslandOf(neighbours, red);
        var queue = new Queue<int>(neighbours.Keys);
        while (queue.TryDequeue(out var node))
        {
            if (node == red || node == black || !neighbours.TryGetValue(node, out var around) || around.Count > 2)
                continue;
            neighbours.Remove(node);
            foreach (var other in around)
            {
                neighbours[other].Remove(node);
                queue.Enqueue(other);
            }

            if (around.Count == 2)
            {
                var (one, two) = (around.First(), around.Last());
                neighbours[one].Add(two);
                neighbours[two].Add(one);
            }
        }

        return neighbours.Keys.All(node => node == red || node == black);
    }

    private static Dictionary<int, HashSet<int>> Neighbours(IEnumerable<(int A, int B)> elements)
    {
        var neighbours = new Dictionary<int, HashSet<int>>();
        foreach (var (a, b) in elements.Where(element => element.A != element.B))
        {
            (neighbours.TryGetValue(a, out var ofA) ? ofA : neighbours[a] = []).Add(b);
            (neighbours.TryGetValue(b, out var ofB) ? ofB : neighbours[b] = []).Add(a);
        }

        return neighbours;
    }

    private static void KeepIslandOf(Dictionary<int, HashSet<int>> neighbours, int node)
    {
        var reached = new HashSet<int> { node };
        var queue = new Queue<int>([node]);
        while (queue.TryDequeue(out var next))
            foreach (var other in neighbours.GetValueOrDefault(next) ?? [])
                if (reached.Add(other))
                    queue.Enqueue(other);
        foreach (var other in neighbours.Keys.Where(other => !reached.Contains(other)).ToArray())
            neighbours.Remove(other);
    }
}
