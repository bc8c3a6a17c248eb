namespace Proveout.Engine.Faults;

/// <summary>A short way through many checks: nearest neighbour first, then mended until no small change helps.</summary>
/// <remarks>
/// Reversing a stretch (Croes, Operations Research 6 (1958) 791-812) and moving a short one (Or, thesis, Northwestern University, 1976), with
/// the best way round of every check by dynamic programming in between. The same checks always give the same way.
/// </remarks>
internal sealed class LongWalk
{
    private const int LongestMoved = 3;
    private const int MostRounds = 40;
    private const long MostWork = 200_000_000;

    private readonly LeadStops _stops;
    private readonly LeadState _from;
    private readonly int[] _way;

    private LongWalk(LeadStops stops, LeadState from, int[] way) => (_stops, _from, _way) = (stops, from, way);

    /// <summary>Goes on from a walk through all of the checks.</summary>
    public static LeadWalk Through(LeadStops stops, LeadWalk from, IReadOnlyList<int> checks)
    {
        var walk = new LongWalk(stops, from.End, NearestNeighbours(stops, from.End, checks));
        walk.Mend();
        return walk._way.Aggregate(from, (before, stop) => before.To(stops, stop));
    }

    private static int[] NearestNeighbours(LeadStops stops, LeadState from, IReadOnlyList<int> checks)
    {
        List<int> open = [.. checks];
        List<int> way = [];
        while (open.Count > 0)
        {
            var here = way.Count == 0 ? from : stops[way[^1]];
            var next = open.SelectMany(stops.Of).MinBy(stop => stops.Cost(here, stop));
            way.Add(next);
            open.Remove(next / 2);
        }

        return [.. way];
    }

    private void Mend()
    {
        var rounds = Math.Clamp(MostWork / Math.Max(1, (long)_way.Length * _way.Length), 1, MostRounds);
        for (var round = 0; round < rounds && (TurnEach() | ReverseStretches() | MoveStretches()); round++)
        {
            // Each change may make room for the next.
        }
    }

    // Cost between the stops at two positions; position -1 is where the walk starts, the one past the last costs nothing.
    private long Between(int position, int stop) => stop < 0 ? 0 : position < 0 ? _stops.Cost(_from, stop) : _stops.Cost(_way[position], stop);

    private int At(int position) => position < _way.Length ? _way[position] : -1;

    private bool ReverseStretches()
    {
        var changed = false;
        for (var first = 0; first < _way.Length - 1; first++)
            for (var last = first + 1; last < _way.Length; last++)
            {
                var now = Between(first - 1, _way[first]) + Between(last, At(last + 1));
                var then = Between(first - 1, _way[last]) + Between(first, At(last + 1));
                if (then >= now)
                    continue;
                Array.Reverse(_way, first, last - first + 1);
                changed = true;
            }

        return changed;
    }

    private bool MoveStretches()
    {
        var changed = false;
        for (var length = 1; length <= LongestMoved; length++)
            for (var first = 0; first + length <= _way.Length; first++)
                changed |= MoveStretch(first, length);
        return changed;
    }

    private bool MoveStretch(int first, int length)
    {
        var (head, tail) = (_way[first], _way[first + length - 1]);
        var after = At(first + length);
        var saved = Between(first - 1, head) + Between(first + length - 1, after) - Between(first - 1, after);
        if (saved <= 0)
            return false;
        for (var place = 0; place <= _way.Length; place++)
        {
            if (place >= first && place <= first + length)
                continue;
            var gap = Between(place - 1, At(place));
            var straight = Between(place - 1, head) + (At(place) < 0 ? 0 : _stops.Cost(tail, At(place))) - gap;
            var turned = Between(place - 1, tail) + (At(place) < 0 ? 0 : _stops.Cost(head, At(place))) - gap;
            if (Math.Min(straight, turned) >= saved)
                continue;
            Put(first, length, place, turned < straight);
            return true;
        }

        return false;
    }

    private void Put(int first, int length, int place, bool turned)
    {
        var stretch = _way[first..(first + length)];
        if (turned)
            Array.Reverse(stretch);
        int[] rest = [.. _way[..first], .. _way[(first + length)..]];
        var at = place > first ? place - length : place;
        rest.AsSpan(0, at).CopyTo(_way);
        stretch.CopyTo(_way, at);
        rest.AsSpan(at).CopyTo(_way.AsSpan(at + length));
    }

    // The best way round of every check, their order given.
    private bool TurnEach()
    {
        IReadOnlyList<LeadWalk> walks = [new LeadWalk(_from, 0, -1, null)];
        foreach (var stop in _way)
            walks = LeadWalk.Best(new[] { stop, _stops.Exchanged(stop) }.Distinct().Select(way => walks.Select(walk => walk.To(_stops, way)).MinBy(walk => walk.Units)!));
        var best = walks.MinBy(walk => walk.Units)!;
        var now = 0L;
        for (var position = 0; position < _way.Length; position++)
            now += Between(position - 1, _way[position]);
        if (best.Units >= now)
            return false;
        best.Stops().ToArray().CopyTo(_way, 0);
        return true;
    }
}
