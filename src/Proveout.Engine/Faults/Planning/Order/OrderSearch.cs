namespace Proveout.Engine.Faults;

/// <summary>Orders groups of checks, one group after the other, for the least changes; and says below what no order comes.</summary>
/// <remarks>
/// Small groups are walked exactly for every end, so that the next group may start from the best of them. After a group too large for that
/// the bound goes on from wherever that group could end.
/// </remarks>
internal sealed class OrderSearch
{
    private readonly LeadStops _stops;
    private readonly IReadOnlyList<Check> _checks;
    private IReadOnlyList<LeadWalk> _walks;
    private IReadOnlyList<LeadWalk> _bounds;

    /// <summary>Starts a search.</summary>
    /// <param name="checks">The checks.</param>
    /// <param name="costs">What changes cost.</param>
    /// <param name="state">How the bench stands.</param>
    public OrderSearch(IReadOnlyList<Check> checks, BenchCosts costs, LeadPlacement state)
    {
        (_checks, _stops) = (checks, new LeadStops(checks, costs));
        _walks = _bounds = [new LeadWalk(_stops.Number(state), 0, -1, null)];
    }

    /// <summary>The stops so far, first to last.</summary>
    public IReadOnlyList<int> Stops => _walks.MinBy(walk => walk.Units)!.Stops();

    /// <summary>No order of the groups so far costs less, in thousandths of a second.</summary>
    public long LowerUnits => _bounds.Min(walk => walk.Units);

    /// <summary>Puts the leads down, as getting to another set-up does.</summary>
    public void PutLeadsDown()
    {
        var (walks, bounds) = (_walks, _bounds);
        _walks = Down(walks);
        _bounds = ReferenceEquals(walks, bounds) ? _walks : Down(bounds);
    }

    /// <summary>Goes on through a group: first what needs no leads (look before you touch), then the rest.</summary>
    /// <param name="group">Positions in the list of checks.</param>
    public void Through(IReadOnlyList<int> group)
    {
        int[] looks = [.. group.Where(check => _checks[check].Points.Count == 0)];
        int[] touches = [.. group.Where(check => _checks[check].Points.Count > 0)];
        if (looks.Length > 0)
        {
            PutLeadsDown();
            var (walks, bounds) = (_walks, _bounds);
            _walks = Past(walks, looks);
            _bounds = ReferenceEquals(walks, bounds) ? _walks : Past(bounds, looks);
        }

        if (touches.Length > ExactWalk.MostChecks)
            ThroughMany(touches);
        else if (touches.Length > 0)
            ThroughFew(touches);
    }

    private static IReadOnlyList<LeadWalk> Down(IReadOnlyList<LeadWalk> walks) =>
        LeadWalk.Best(walks.Select(walk => walk with { End = walk.End.LeadsDown }));

    private static IReadOnlyList<LeadWalk> Past(IReadOnlyList<LeadWalk> walks, int[] looks) =>
        [.. walks.Select(walk => looks.Aggregate(walk, (before, look) => before with { Stop = 2 * look, Before = before }))];

    private void ThroughFew(int[] checks)
    {
        var (walks, bounds) = (_walks, _bounds);
        _walks = ExactWalk.Through(_stops, walks, checks);
        _bounds = ReferenceEquals(walks, bounds) ? _walks : ExactWalk.Through(_stops, bounds, checks);
    }

    private void ThroughMany(int[] checks)
    {
        var lower = WalkBound.Of(_stops, _bounds, checks);
        _bounds = LeadWalk.Best(checks.SelectMany(_stops.Of).Select(stop => new LeadWalk(_stops[stop], lower, stop, null)));
        _walks = [LongWalk.Through(_stops, _walks.MinBy(walk => walk.Units)!, checks)];
    }
}
