namespace Proveout.Engine.Faults;

/// <summary>The cheapest ways through a few checks, for every end, by dynamic programming over sets of checks.</summary>
/// <remarks>Held and Karp, Journal of the Society for Industrial and Applied Mathematics 10 (1962) 196-210; Bellman, Journal of the ACM 9 (1962) 61-63.</remarks>
internal static class ExactWalk
{
    /// <summary>Most checks for which this is quick.</summary>
    public const int MostChecks = 10;

    /// <summary>Cheapest walks on from some walks through all of the checks, one for each end.</summary>
    public static IReadOnlyList<LeadWalk> Through(LeadStops stops, IReadOnlyList<LeadWalk> from, IReadOnlyList<int> checks)
    {
        int[][] stopsOf = [.. checks.Select(stops.Of)];
        var reached = new Dictionary<int, LeadWalk>[1 << checks.Count];
        for (var set = 1; set < reached.Length; set++)
        {
            var here = reached[set] = [];
            for (var last = 0; last < checks.Count; last++)
            {
                if ((set >> last & 1) == 0)
                    continue;
                var without = set & ~(1 << last);
                IEnumerable<LeadWalk> before = without == 0 ? from : reached[without].Values;
                foreach (var stop in stopsOf[last])
                    here[stop] = Cheapest(stops, before, stop).To(stops, stop);
            }
        }

        return LeadWalk.Best(reached[^1].Values);
    }

    private static LeadWalk Cheapest(LeadStops stops, IEnumerable<LeadWalk> walks, int stop)
    {
        LeadWalk? best = null;
        var least = long.MaxValue;
        foreach (var walk in walks)
            if (walk.Units + stops.Cost(walk.End, stop) is var units && units < least)
                (best, least) = (walk, units);
        return best!;
    }
}
