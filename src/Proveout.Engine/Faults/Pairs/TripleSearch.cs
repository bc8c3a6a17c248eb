namespace Proveout.Engine.Faults;

/// <summary>Finds the masked triples that hold a fault which the plan catches alone.</summary>
/// <remarks>
/// A triple stands with the first of its caught faults. Unless one of the two others touches the guard of that fault the triple is caught; so it is
/// built from a fault and another that touches its guard. When these two are caught together a third must touch the guard of that verdict.
/// </remarks>
internal sealed class TripleSearch
{
    private readonly PairScreen _screen;
    private readonly bool[] _isAsked;
    private readonly int[] _uncaught;
    private readonly HashSet<int>?[] _guard;
    private readonly List<int>?[] _caughtTouching;
    private readonly List<int>?[] _uncaughtTouching;
    private readonly HashSet<int>[] _contradicting;

    /// <summary>Prepares the search among some faults.</summary>
    public TripleSearch(PairScreen screen, int[] faults, IFaultInteractions interactions)
    {
        _screen = screen;
        var count = screen.Everyone.Length;
        _isAsked = new bool[count];
        _guard = new HashSet<int>?[count];
        _caughtTouching = new List<int>?[count];
        _uncaughtTouching = new List<int>?[count];
        _contradicting = [.. screen.Everyone.Select(fault => interactions.Contradicting(fault).ToHashSet())];
        _uncaught = [.. faults.Where(fault => !screen.IsCaught(fault))];
        foreach (var fault in faults)
            _isAsked[fault] = true;
        foreach (var fault in faults)
            if (screen.IsCaught(fault))
                foreach (var other in _guard[fault] = [.. screen.SmallestGuard(fault).Where(other => _isAsked[other] && other != fault)])
                    (_caughtTouching[other] ??= []).Add(fault);
        foreach (var fault in _uncaught)
            foreach (var other in screen.CatchingWith(fault).SelectMany(item => item.Faults).Distinct())
                (_uncaughtTouching[other] ??= []).Add(fault);
    }

    /// <summary>The faults that cannot be made together with a fault.</summary>
    public HashSet<int> Contradicting(int fault) => _contradicting[fault];

    /// <summary>The masked triples of a caught fault with two others of which none is caught and comes before it.</summary>
    public IReadOnlyList<int[]> MaskedWith(int fault, IFaultInteractions own)
    {
        var tried = new HashSet<(int, int)>();
        List<int[]> masked = [];
        foreach (var other in _guard[fault]!)
        {
            if (!IsPossible(fault, other))
                continue;
            var (thirds, surelyMasked) = Thirds(fault, other, own);
            foreach (var third in thirds)
                if (third != other && IsPossible(fault, third) && !_contradicting[other].Contains(third)
                    && (MayStay(other, fault, third) && MayStay(third, fault, other))
                    && tried.Add((Math.Min(other, third), Math.Max(other, third)))
                    && (surelyMasked.Contains(third) || CatchingCheck([fault, other, third], own) is null))
                    masked.Add([.. new[] { fault, other, third }.Order()]);
        }

        return masked;
    }

    // Thirds that may leave the triple masked, and those of them that surely do.
    private (IEnumerable<int> Thirds, HashSet<int> SurelyMasked) Thirds(int fault, int other, IFaultInteractions own)
    {
        int[] pair = [fault, other];
        if (CatchingCheck(pair, own) is { } catching)
            return ((own.Overturning(pair, catching, isCaught: true) ?? _screen.Everyone).Where(third => _isAsked[third]), []);
        var unsure = new HashSet<int>([.. _uncaughtTouching[fault] ?? [], .. _uncaughtTouching[other] ?? []]);
        foreach (var check in _screen.Touched(fault).Union(_screen.Touched(other)))
            unsure.UnionWith(own.Overturning(pair, check, isCaught: false) ?? _screen.Everyone);
        return (
            [.. _uncaught, .. _caughtTouching[fault] ?? [], .. _caughtTouching[other] ?? []],
            [.. _uncaught.Where(third => !unsure.Contains(third))]);
    }

    private int? CatchingCheck(ReadOnlySpan<int> faults, IFaultInteractions own)
    {
        var touched = new SortedSet<int>();
        foreach (var fault in faults)
            touched.UnionWith(_screen.Touched(fault));
        foreach (var check in touched)
            if (own.IsSurelyCaught(faults, check))
                return check;
        return null;
    }

    private bool IsPossible(int fault, int other) =>
        other != fault && (other > fault || !_screen.IsCaught(other)) && !_contradicting[fault].Contains(other);

    private bool MayStay(int fault, int one, int two) => _guard[fault] is not { } guard || guard.Contains(one) || guard.Contains(two);
}
