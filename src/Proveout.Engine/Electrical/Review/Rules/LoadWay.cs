namespace Proveout.Engine.Electrical;

/// <summary>The way of a load's current from its supply and back.</summary>
internal static class LoadWay
{
    /// <summary>Its elements and nodes; empty when no single way is found.</summary>
    public static (IReadOnlyList<NetworkElement> Elements, IReadOnlyList<int> Nodes) Of(ReviewContext context, Load load)
    {
        var supply = load.Reach.Supply;
        return context.WayBetween(supply.Plus, load.Fed) is { } there && context.WayBetween(load.Returned, supply.Zero) is { } back
            ? ([.. there.Elements, .. back.Elements], [.. there.Nodes, .. back.Nodes])
            : ([], []);
    }
}
