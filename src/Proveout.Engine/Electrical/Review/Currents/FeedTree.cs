namespace Proveout.Engine.Electrical;

/// <summary>The ways of least resistance from one node to all that it reaches.</summary>
/// <param name="start">The node.</param>
internal sealed class FeedTree(int start)
{
    private readonly Dictionary<int, (double Cost, int Before, NetworkElement? By)> _reached = new() { [start] = (0, start, null) };

    /// <summary>Every node reached.</summary>
    public IReadOnlyCollection<int> Nodes => _reached.Keys;

    /// <summary>True when a node is reached.</summary>
    public bool Contains(int node) => _reached.ContainsKey(node);

    /// <summary>What the way to a node costs.</summary>
    public double CostOf(int node) => _reached[node].Cost;

    /// <summary>Puts down a way to a node; false when a way is known that costs no more.</summary>
    public bool Reach(int node, int before, NetworkElement by, double cost)
    {
        if (_reached.TryGetValue(node, out var known) && known.Cost <= cost)
            return false;
        _reached[node] = (cost, before, by);
        return true;
    }

    /// <summary>The elements on the way, from the far node to the start, each with the node beyond it.</summary>
    public IEnumerable<(NetworkElement Element, int Node)> WayTo(int node)
    {
        for (var at = node; _reached[at].By is { } element; at = _reached[at].Before)
            yield return (element, at);
    }
}
