namespace Proveout.Engine.Faults;

/// <summary>Triples of faults none of which the plan surely catches alone.</summary>
/// <remarks>
/// A check may catch a triple only where one of the three touches the guard of another's verdict at that check; and, unless it catches these two,
/// where the third touches the guard of theirs.
/// </remarks>
internal sealed class UncaughtTriples
{
    private readonly PairScreen _screen;
    private readonly int[] _faults;
    private readonly HashSet<int> _asked;
    private readonly Dictionary<int, HashSet<int>> _contradicting;

    public UncaughtTriples(PairScreen screen, int[] faults, IFaultInteractions interactions)
    {
        (_screen, _faults, _asked) = (screen, faults, [.. faults]);
        _contradicting = faults.ToDictionary(fault => fault, fault => interactions.Contradicting(fault).ToHashSet());
        Simulated = TripleTotals.Of(faults, fault => _contradicting[fault]).Simulated;
    }

    /// <summary>Number of triples that can be made together.</summary>
    public long Simulated { get; }

    /// <summary>Number of those that the plan surely catches.</summary>
    public long CountCaught(FaultThreads threads, CancellationToken cancellation)
    {
        var caught = new HashSet<(int, int, int)>();
        threads.ForEach(
            _faults.Length,
            (index, own) =>
            {
                List<(int, int, int)> found = [];
                foreach (var (check, others) in _screen.CatchingWith(_faults[index]))
                    foreach (var other in others)
                        if (CanJoin(other, _faults[index]))
                            Find(_faults[index], other, check, own, found);
                lock (caught)
                    caught.UnionWith(found);
            },
            cancellation);
        return caught.Count;
    }

    private void Find(int one, int two, int check, IFaultInteractions own, List<(int, int, int)> found)
    {
        var isCaught = own.IsSurelyCaught([one, two], check);
        var overturning = own.Overturning([one, two], check, isCaught) ?? _screen.Everyone;
        foreach (var third in isCaught ? _faults : overturning)
            if (CanJoin(third, one) && CanJoin(third, two)
                && ((isCaught && Array.BinarySearch(overturning, third) < 0) || own.IsSurelyCaught([one, two, third], check)))
                found.Add(Key(one, two, third));
    }

    private bool CanJoin(int fault, int other) => fault != other && _asked.Contains(fault) && !_contradicting[other].Contains(fault);

    private static (int, int, int) Key(int one, int two, int three)
    {
        int[] sorted = [.. new[] { one, two, three }.Order()];
        return (sorted[0], sorted[1], sorted[2]);
    }
}
