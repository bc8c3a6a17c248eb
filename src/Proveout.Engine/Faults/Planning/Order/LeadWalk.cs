namespace Proveout.Engine.Faults;

/// <summary>One way to have come so far: where it ends, what it took, its last stop and what came before.</summary>
/// <param name="End">How leads and meter stand.</param>
/// <param name="Units">Cost so far.</param>
/// <param name="Stop">Last stop; -1 at the beginning.</param>
/// <param name="Before">The walk up to it.</param>
internal sealed record LeadWalk(LeadState End, long Units, int Stop, LeadWalk? Before)
{
    /// <summary>The stops, first to last.</summary>
    public IReadOnlyList<int> Stops()
    {
        List<int> stops = [];
        for (var walk = this; walk is not null; walk = walk.Before)
            if (walk.Stop >= 0)
                stops.Add(walk.Stop);
        stops.Reverse();
        return stops;
    }

    /// <summary>The walk one stop further.</summary>
    public LeadWalk To(LeadStops stops, int stop) => new(stops[stop], Units + stops.Cost(End, stop), stop, this);

    /// <summary>Of the walks that end alike only the cheapest, the first of equals.</summary>
    public static IReadOnlyList<LeadWalk> Best(IEnumerable<LeadWalk> walks) => [.. walks.GroupBy(walk => walk.End).Select(alike => alike.MinBy(walk => walk.Units)!)];
}
