namespace Proveout.Engine.Faults;

/// <summary>The ways in which each check can be done, and what going from one to another costs.</summary>
/// <remarks>
/// A stop is a check with its leads one way round: number 2i for check i as it is written, 2i + 1 with the leads exchanged.
/// Between stops the cost is the same both ways.
/// </remarks>
internal sealed class LeadStops
{
    private readonly LeadState[] _stops;
    private readonly int[][] _ways;
    private readonly Dictionary<CheckPoint, int> _places = [];
    private readonly Dictionary<string, int> _kinds = new(StringComparer.Ordinal);

    /// <summary>Numbers the stops of some checks.</summary>
    public LeadStops(IReadOnlyList<Check> checks, BenchCosts costs)
    {
        (MoveUnits, ChangeUnits) = (ToUnits(costs.LeadMoveSeconds), ToUnits(costs.MeterChangeSeconds));
        _ways = [.. checks.Select((check, index) => !check.MindsPolarity && check.Points.Count == 2 ? new[] { 2 * index, (2 * index) + 1 } : [2 * index])];
        _stops = [.. checks.SelectMany(check => new[] { LeadPlacement.Empty.After(check), LeadPlacement.Empty.After(check, swapped: true) }).Select(Number)];
    }

    /// <summary>Cost of moving one lead, in thousandths of a second.</summary>
    public long MoveUnits { get; }

    /// <summary>Cost of setting the meter to another kind of measurement, in thousandths of a second.</summary>
    public long ChangeUnits { get; }

    /// <summary>The ways of doing a check.</summary>
    public int[] Of(int check) => _ways[check];

    /// <summary>The same check the other way round; the same stop when it minds.</summary>
    public int Exchanged(int stop) => _ways[stop / 2].Length == 2 ? stop ^ 1 : stop;

    /// <summary>How leads and meter stand at a stop.</summary>
    public LeadState this[int stop] => _stops[stop];

    /// <summary>The numbers of a state of the bench.</summary>
    public LeadState Number(LeadPlacement state) => new(Number(state.Red), Number(state.Black), state.Kind is null ? LeadState.None : Number(_kinds, state.Kind));

    /// <summary>Cost of going from a state to a stop.</summary>
    public long Cost(LeadState from, int stop)
    {
        var to = _stops[stop];
        return (to.Red != from.Red && to.Red != LeadState.None ? MoveUnits : 0)
            + (to.Black != from.Black && to.Black != LeadState.None ? MoveUnits : 0)
            + (to.Kind != from.Kind ? ChangeUnits : 0);
    }

    /// <summary>Cost of going from one stop to another.</summary>
    public long Cost(int from, int to) => Cost(_stops[from], to);

    private static long ToUnits(double seconds) => (long)Math.Round(seconds * CoverProblem.UnitsASecond);

    private static int Number<T>(Dictionary<T, int> numbers, T thing)
        where T : notnull
    {
        if (!numbers.TryGetValue(thing, out var number))
            numbers[thing] = number = numbers.Count;
        return number;
    }

    private int Number(CheckPoint? point) => point is null ? LeadState.None : Number(_places, point);
}
