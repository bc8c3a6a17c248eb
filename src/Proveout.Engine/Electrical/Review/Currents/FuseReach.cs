namespace Proveout.Engine.Electrical;

/// <summary>What is reached from one node, and through which fuses.</summary>
/// <param name="limitAmperes">Most current that the start delivers; infinite when not limited.</param>
internal sealed class FuseReach(double limitAmperes)
{
    /// <summary>Stands for the start's own limit.</summary>
    public const int NoFuse = -1;

    private readonly Dictionary<int, int> _fuseOf = [];
    private readonly Dictionary<int, (double Amperes, int Before)> _fuses = new() { [NoFuse] = (limitAmperes, NoFuse) };

    /// <summary>True when a node is reached.</summary>
    public bool Contains(int node) => _fuseOf.ContainsKey(node);

    /// <summary>Most current to a node in amperes; zero when it is not reached.</summary>
    public double AmperesAt(int node) => _fuseOf.TryGetValue(node, out var fuse) ? _fuses[fuse].Amperes : 0;

    /// <summary>Most current in amperes to several nodes together: their fuses' sum, and no more than any fuse before them lets through.</summary>
    public double AmperesTogether(IEnumerable<int> nodes)
    {
        var limits = nodes.Where(Contains).Select(node => _fuseOf[node]).Distinct().ToDictionary(fuse => fuse, fuse => _fuses[fuse].Amperes);
        while (limits.Keys.Where(fuse => fuse != NoFuse).OrderByDescending(Depth).Select(fuse => (int?)fuse).FirstOrDefault() is { } deepest)
        {
            var before = _fuses[deepest].Before;
            var sum = limits.GetValueOrDefault(before) + limits[deepest];
            limits.Remove(deepest);
            limits[before] = Math.Min(sum, _fuses[before].Amperes);
        }

        return limits.GetValueOrDefault(NoFuse);
    }

    /// <summary>Puts down that a node is reached through the same fuses as another one, and through a smaller one when an element has one.</summary>
    /// <returns>False when the node is reached with as much or more already.</returns>
    public bool Reach(int node, int from, int element, double ratingAmperes)
    {
        var fuse = ratingAmperes < AmperesAt(from) ? element : _fuseOf[from];
        if (Contains(node) && AmperesAt(node) >= Math.Min(ratingAmperes, AmperesAt(from)))
            return false;
        if (fuse == element)
            _fuses[element] = (ratingAmperes, _fuseOf[from]);
        _fuseOf[node] = fuse;
        return true;
    }

    /// <summary>Puts down where the current comes from.</summary>
    public void Start(int node) => _fuseOf[node] = NoFuse;

    private int Depth(int fuse)
    {
        var depth = 0;
        for (var at = fuse; at != NoFuse; at = _fuses[at].Before)
            depth++;
        return depth;
    }
}
