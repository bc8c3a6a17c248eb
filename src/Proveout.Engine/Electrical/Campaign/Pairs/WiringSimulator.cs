using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates several wiring faults at once, one check at a time. One thread's own.</summary>
public sealed class WiringSimulator : IFaultSimulator
{
    private readonly PairTables _tables;
    private readonly PairRoom _room;
    private readonly IPairWorker?[] _workers;
    private readonly bool[] _isApplied;
    private int[] _faults = [-1];

    /// <summary>Makes a simulator of a campaign's faults and checks.</summary>
    public WiringSimulator(WiringCampaign campaign)
        : this(new PairTables(campaign))
    {
    }

    private WiringSimulator(PairTables tables)
        : this(tables, new PairRoom(tables.Faults))
    {
    }

    internal WiringSimulator(PairTables tables, PairRoom room)
    {
        (_tables, _room) = (tables, room);
        _workers = new IPairWorker?[tables.Tables.Length];
        _isApplied = new bool[tables.Tables.Length];
    }

    /// <summary>The same for another thread.</summary>
    public WiringSimulator ForAnotherThread() => new(_tables);

    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) =>
        _tables.Contradictions.Among(faults) ? null : WorkerFor(faults, _tables.PlaceOf(check).Table).Shown(_tables.PlaceOf(check).Index);

    /// <summary>True when a check surely catches all these faults together; they do not contradict each other.</summary>
    internal bool IsSurelyCaught(ReadOnlySpan<int> faults, int check) =>
        WorkerFor(faults, _tables.PlaceOf(check).Table).IsSurelyCaught(_tables.PlaceOf(check).Index);

    private IPairWorker WorkerFor(ReadOnlySpan<int> faults, int table)
    {
        if (!faults.SequenceEqual(_faults))
        {
            _faults = faults.ToArray();
            Array.Clear(_isApplied);
        }

        var worker = _workers[table] ??= _tables.Tables[table].NewWorker(_room);
        if (!_isApplied[table])
            worker.Apply(_faults);
        _isApplied[table] = true;
        return worker;
    }
}
