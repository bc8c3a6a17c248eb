namespace Proveout.Engine.Electrical;

/// <summary>What a supply reaches through metal, fuses, contacts in whatever position, and electronic switches.</summary>
public sealed class SupplyReach
{
    private readonly FuseReach _feeds;
    private readonly FuseReach _returns;
    private readonly Lazy<FeedTree> _there;
    private readonly Lazy<FeedTree> _back;

    internal SupplyReach(Supply supply, FeedNetwork network)
    {
        Supply = supply;
        _feeds = network.ReachFrom(supply.Plus, supply.LimitAmperes);
        _returns = network.ReachFrom(supply.Zero, double.PositiveInfinity);
        _there = new(() => network.WaysFrom(supply.Plus));
        _back = new(() => network.WaysFrom(supply.Zero));
    }

    /// <summary>The supply.</summary>
    public Supply Supply { get; }

    /// <summary>Nodes that the positive pole or line reaches.</summary>
    public IEnumerable<int> Fed => _there.Value.Nodes;

    /// <summary>Nodes that the negative pole or neutral reaches.</summary>
    public IEnumerable<int> Returned => _back.Value.Nodes;

    /// <summary>True when the positive pole or line reaches a node.</summary>
    public bool Feeds(int node) => _feeds.Contains(node);

    /// <summary>True when the negative pole or neutral reaches a node.</summary>
    public bool Returns(int node) => _returns.Contains(node);

    /// <summary>True when current can go in at one node and come back from the other, and in no other way round.</summary>
    /// <remarks>Contacts that turn polarity, taken as closed all together, join both poles: then nothing can be said.</remarks>
    public bool Drives(int fed, int returned) => Feeds(fed) && Returns(returned) && !(Feeds(returned) && Returns(fed));

    /// <summary>Most current in amperes that can flow to a node from the supply for long: the smallest fuse on the way, on the way that has the largest.</summary>
    /// <returns>Infinite when no fuse and no limit is on the way; zero when the node is not reached.</returns>
    public double AmperesAt(int node) => _feeds.AmperesAt(node);

    /// <summary>Most current in amperes to several nodes together: the sum of their fuses, and no more than the fuses before those let through.</summary>
    public double AmperesTogether(IEnumerable<int> nodes) => _feeds.AmperesTogether(nodes);

    /// <summary>True when the first node is farther from the supply's negative pole or neutral than the second; both are joined to it.</summary>
    internal bool IsFartherBack(int node, int other) => _back.Value.CostOf(node) > _back.Value.CostOf(other);

    /// <summary>The elements between the supply's positive pole or line and a node that it feeds, each with the node beyond it, the far end first.</summary>
    internal IEnumerable<(NetworkElement Element, int Node)> WayTo(int fed) => _there.Value.WayTo(fed);

    /// <summary>The elements between a node and the supply's negative pole or neutral, each with the node beyond it, the far end first.</summary>
    internal IEnumerable<(NetworkElement Element, int Node)> WayBack(int returned) => _back.Value.WayTo(returned);
}
