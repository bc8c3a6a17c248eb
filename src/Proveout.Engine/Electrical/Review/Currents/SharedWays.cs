namespace Proveout.Engine.Electrical;

/// <summary>How many ways share a current that was put on one of them.</summary>
internal static class SharedWays
{
    /// <summary>Two when the supply still reaches what is behind a node by another way; else one.</summary>
    public static int Of(ReviewContext context, int node, Flow flow)
    {
        var demand = flow.Demands[0];
        var isBefore = demand.Reach.Feeds(node);
        var (start, end) = isBefore ? (demand.Reach.Supply.Plus, demand.Fed) : (demand.Reach.Supply.Zero, demand.Returned);
        if (node == start || node == end)
            return 1;
        return context.JoinedTo(start, element => element.A == node || element.B == node).Contains(end) ? 2 : 1;
    }
}
