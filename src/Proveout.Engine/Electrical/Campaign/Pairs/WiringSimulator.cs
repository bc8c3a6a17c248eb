using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates several wiring faults at once, one check at a time. One thread's own.</summary>
public sealed class WiringSimulator : IFaultSimulator
{
    private readonly PairTables _tables;
    private readonly PairSetUpWorker?[] _workers;
    private readonly bool[] _isApplied;
    private int[] _faults = [-1];

    /// <summary>Makes a simulator of a campaign's faults and checks.</summary>
    public WiringSimulator(WiringCampaign campaign)
        : this(new PairTables(campaign))
    {
    }

    internal WiringSimulator(PairTables tables)
    {
        _tables = tables;
        _workers = new PairSetUpWorker?[tables.SetUps.Length];
        _isApplied = new bool[tables.SetUps.Length];
    }

    /// <summary>The same for another thread.</summary>
    public WiringSimulator ForAnotherThread() => new(_tables);

    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) =>
        _tables.Contradictions.Among(faults) ? null : WorkerFor(faults, check).Shown(_tables.Candidate(check), IndexInSetUp(check));

    /// <summary>True when a check surely catches all these faults together; they do not contradict each other.</summary>
    internal bool IsSurelyCaught(ReadOnlySpan<int> faults, int check) =>
        WorkerFor(faults, check).IsSurelyCaught(_tables.Candidate(check), IndexInSetUp(check), _tables.LimitsOf(check));

    private int IndexInSetUp(int check) => check - _tables.SetUps[_tables.SetUpOf(check)].Table.FirstCheck;

    private PairSetUpWorker WorkerFor(ReadOnlySpan<int> faults, int check)
    {
        if (!faults.SequenceEqual(_faults))
        {
            _faults = faults.ToArray();
            Array.Clear(_isApplied);
        }

        var setUp = _tables.SetUpOf(check);
        var worker = _workers[setUp] ??= new PairSetUpWorker(_tables.SetUps[setUp]);
        if (!_isApplied[setUp])
            worker.Apply(_faults);
        _isApplied[setUp] = true;
        return worker;
    }
}
