using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What the wiring knows of faults made together. One thread's own.</summary>
public sealed class WiringInteractions : IFaultInteractions
{
    private readonly PairTables _tables;
    private readonly WiringSimulator _simulator;
    private readonly PairRoom _room;
    private readonly IPairGuards?[] _guards;
    private readonly bool[] _isGuarding;
    private readonly List<int> _found = [];
    private ICheckWorker[]? _workers;
    private int[] _guarded = [-1];

    /// <summary>Prepares the interactions of a campaign's faults.</summary>
    public WiringInteractions(WiringCampaign campaign)
        : this(new PairTables(campaign))
    {
    }

    private WiringInteractions(PairTables tables)
    {
        _tables = tables;
        _room = new PairRoom(tables.Faults);
        _simulator = new WiringSimulator(tables, _room);
        _guards = new IPairGuards?[tables.Tables.Length];
        _isGuarding = new bool[tables.Tables.Length];
    }

    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) => _simulator.Shown(faults, check);

    /// <inheritdoc/>
    public IReadOnlyList<int> Contradicting(int fault) => _tables.Contradictions.Of(fault);

    /// <inheritdoc/>
    public bool IsSurelyCaught(ReadOnlySpan<int> faults, int check) => _simulator.IsSurelyCaught(faults, check);

    /// <inheritdoc/>
    public int[]? Overturning(ReadOnlySpan<int> faults, int check, bool isCaught, bool thoroughly)
    {
        var (table, index) = _tables.PlaceOf(check);
        var guards = GuardsFor(faults, table);
        _found.Clear();
        return guards.TryAddOverturning(index, isCaught, thoroughly, _found) ? Rising(_found) : null;
    }

    /// <inheritdoc/>
    public TogetherShows ShowsTogether(ReadOnlySpan<int> faults)
    {
        var merged = TogetherSimulation.Merge(faults.ToArray().Select(fault => _tables.Faults[fault]));
        var readings = new AlteredReadings();
        foreach (var worker in _workers ??= _tables.NewWorkers())
            worker.AddResponses(merged, readings);
        return new TogetherShows(
            [.. readings.Checks.Where((check, place) => readings.Intervals[place].IsDisjointFrom(_tables.ExpectationOf(check)))],
            readings.IsSameCircuit);
    }

    /// <inheritdoc/>
    public IFaultInteractions ForAnotherThread() => new WiringInteractions(_tables);

    private IPairGuards GuardsFor(ReadOnlySpan<int> faults, int table)
    {
        if (!faults.SequenceEqual(_guarded))
        {
            _guarded = faults.ToArray();
            Array.Clear(_isGuarding);
        }

        var guards = _guards[table] ??= _tables.Tables[table].NewGuards(_room);
        if (!_isGuarding[table])
            guards.Apply(_guarded);
        _isGuarding[table] = true;
        return guards;
    }

    private static int[] Rising(List<int> faults)
    {
        faults.Sort();
        var distinct = 0;
        for (var index = 0; index < faults.Count; index++)
            if (index == 0 || faults[index] != faults[distinct - 1])
                faults[distinct++] = faults[index];
        return [.. faults.Take(distinct)];
    }
}
