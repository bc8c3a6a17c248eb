namespace Proveout.Engine.Faults;

/// <summary>A cost below which no way through some checks lies.</summary>
/// <remarks>
/// A way is a spanning tree, so none is cheaper than the least spanning tree; weights on the checks that draw each to two neighbours raise the
/// bound (Held and Karp, Operations Research 18 (1970) 1138-1162). All costs are multiples of one grain, so the bound may be rounded up to it.
/// </remarks>
internal sealed class WalkBound
{
    private const int MostRounds = 100;
    private const long MostWork = 60_000_000;
    private const int LargestTable = 3000;

    private readonly int _count;
    private readonly LeadStops _stops;
    private readonly IReadOnlyList<LeadWalk> _from;
    private readonly IReadOnlyList<int> _checks;
    private readonly double[,]? _table;
    private readonly double[] _weight;
    private readonly int[] _degree;
    private readonly long _grain;

    // Number 0 is the beginning; it has one neighbour, and so has the last check, whichever that is.
    private WalkBound(LeadStops stops, IReadOnlyList<LeadWalk> from, IReadOnlyList<int> checks)
    {
        (_stops, _from, _checks, _count) = (stops, from, checks, checks.Count + 1);
        (_weight, _degree) = (new double[_count], new int[_count]);
        _grain = (long)System.Numerics.BigInteger.GreatestCommonDivisor(stops.MoveUnits, stops.ChangeUnits);
        _table = _count <= LargestTable ? Table() : null;
    }

    /// <summary>Cost, that of the walks so far included, that no way on through all of the checks comes below.</summary>
    public static long Of(LeadStops stops, IReadOnlyList<LeadWalk> from, IReadOnlyList<int> checks) => new WalkBound(stops, from, checks).Best();

    private double[,] Table()
    {
        var table = new double[_count, _count];
        for (var one = 1; one < _count; one++)
            for (var two = 0; two < one; two++)
                table[one, two] = table[two, one] = Computed(two, one);
        return table;
    }

    private double Cost(int one, int two) => _table is { } table ? table[one, two] : Computed(Math.Min(one, two), Math.Max(one, two));

    private long Computed(int one, int two)
    {
        var least = long.MaxValue;
        foreach (var there in _stops.Of(_checks[two - 1]))
            if (one == 0)
                foreach (var walk in _from)
                    least = Math.Min(least, walk.Units + _stops.Cost(walk.End, there));
            else
                foreach (var here in _stops.Of(_checks[one - 1]))
                    least = Math.Min(least, Math.Min(_stops.Cost(here, there), _stops.Cost(there, here)));
        return least;
    }

    private long Best()
    {
        var best = 0.0;
        var step = (double)_grain;
        for (var round = 0; round < MostRounds && (round == 0 || (long)round * _count * _count < MostWork); round++)
        {
            var bound = SpanningTree() - (2 * _weight.Sum()) + _weight.Skip(1).Min();
            best = Math.Max(best, bound);
            for (var check = 1; check < _count; check++)
                _weight[check] += step * (_degree[check] - 2);
            step *= 0.95;
        }

        return _grain == 0 ? 0 : (long)Math.Ceiling((best / _grain) - 1e-6) * _grain;
    }

    // Prim, Bell System Technical Journal 36 (1957) 1389-1401.
    private double SpanningTree()
    {
        Array.Clear(_degree);
        var nearest = new double[_count];
        var by = new int[_count];
        var isIn = new bool[_count];
        Array.Fill(nearest, double.PositiveInfinity);
        nearest[0] = 0;
        var total = 0.0;
        for (var turn = 0; turn < _count; turn++)
        {
            var next = -1;
            for (var node = 0; node < _count; node++)
                if (!isIn[node] && (next < 0 || nearest[node] < nearest[next]))
                    next = node;
            isIn[next] = true;
            total += nearest[next];
            if (turn > 0)
                (_degree[next], _degree[by[next]]) = (_degree[next] + 1, _degree[by[next]] + 1);
            for (var node = 0; node < _count; node++)
                if (!isIn[node] && Cost(next, node) + _weight[next] + _weight[node] is var cost && cost < nearest[node])
                    (nearest[node], by[node]) = (cost, next);
        }

        return total;
    }
}
