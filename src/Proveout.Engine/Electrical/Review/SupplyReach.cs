namespace Proveout.Engine.Electrical;

/// <summary>What a supply reaches through metal, fuses, contacts in whatever position, and electronic switches.</summary>
public sealed class SupplyReach
{
    private readonly FuseReach _feeds;
    private readonly FuseReach _returns;

    internal SupplyReach(Supply supply, FeedNetwork network)
    {
        Supply = supply;
        _feeds = network.From(supply.Plus, supply.LimitAmperes);
        _returns = network.From(supply.Zero, double.PositiveInfinity);
    }

    /// <summary>The supply.</summary>
    public Supply Supply { get; }

    /// <summary>True when the positive pole or line reaches a node.</summary>
    public bool Feeds(int node) => _feeds.Contains(node);

    /// <summary>True when the negative pole or neutral reaches a node.</summary>
    public bool Returns(int node) => _returns.Contains(node);

    /// <summary>Most current in amperes that can flow to a node from the supply for long: the smallest fuse on the way, on the way that has the largest.</summary>
    /// <returns>Infinite when no fuse and no limit is on the way; zero when the node is not reached.</returns>
    public double AmperesAt(int node) => _feeds.AmperesAt(node);

    /// <summary>Most current in amperes to several nodes together: the sum of their fuses, and no more than the fuses before those let through.</summary>
    public double AmperesTogether(IEnumerable<int> nodes) => _feeds.AmperesTogether(nodes);
}
