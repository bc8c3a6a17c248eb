namespace Proveout.Engine.Faults;

/// <summary>Which faults could overturn what the checks say of each fault alone. All other pairs are decided without arithmetic.</summary>
/// <remarks>
/// A fault that a check surely catches is caught together with any other that does not touch what holds that verdict. A check that touches
/// neither of two faults shows what the sound machine shows.
/// </remarks>
internal sealed class PairScreen
{
    // More checks than this that catch a fault hardly ever leave fewer others that could overturn them all.
    private const int MostGuards = 6;

    private readonly FaultDictionary _dictionary;
    private readonly int[] _checks;
    private readonly List<int>[] _touched;
    private readonly int[]?[] _overturningCaught;
    private readonly int[]?[] _smallestGuard;
    private readonly (int Check, int[] Faults)[]?[] _overturningUncaught;

    /// <summary>Screens the faults of a dictionary for some checks.</summary>
    /// <param name="dictionary">What every check shows under every fault alone.</param>
    /// <param name="checks">The checks.</param>
    /// <param name="threads">What the trade knows of faults made together.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <param name="faults">The faults; all when null.</param>
    public PairScreen(
        FaultDictionary dictionary,
        IReadOnlyList<int> checks,
        FaultThreads threads,
        CancellationToken cancellation,
        int[]? faults = null)
    {
        _dictionary = dictionary;
        _checks = [.. checks.Order()];
        Everyone = [.. Enumerable.Range(0, dictionary.Faults.Count)];
        _touched = Array.ConvertAll(Everyone, _ => new List<int>());
        _overturningCaught = new int[]?[Everyone.Length];
        _smallestGuard = new int[]?[Everyone.Length];
        _overturningUncaught = new (int, int[])[]?[Everyone.Length];
        var touching = new int[_checks.Length][];
        threads.ForEach(
            _checks.Length,
            (place, own) => touching[place] = own.Overturning([], _checks[place], isCaught: false) ?? Everyone,
            cancellation);
        for (var place = 0; place < _checks.Length; place++)
            foreach (var fault in touching[place])
                _touched[fault].Add(_checks[place]);
        var screened = faults ?? Everyone;
        threads.ForEach(screened.Length, (place, own) => Screen(screened[place], own), cancellation);
    }

    /// <summary>Every fault.</summary>
    public int[] Everyone { get; }

    /// <summary>True when one of the checks surely catches a fault alone.</summary>
    public bool IsCaught(int fault) => _overturningCaught[fault] is not null;

    /// <summary>The faults that none of the checks surely catches alone, rising.</summary>
    public IEnumerable<int> Uncaught => Everyone.Where(fault => !IsCaught(fault));

    /// <summary>The checks that may show something else under a fault, alone or with others.</summary>
    public IReadOnlyList<int> Touched(int fault) => _touched[fault];

    /// <summary>True when a check may show something else under a fault, alone or with others.</summary>
    public bool IsTouched(int fault, int check) => _touched[fault].BinarySearch(check) >= 0;

    /// <summary>The faults that may keep every check from catching a fault that is caught alone, rising.</summary>
    public int[] Overturning(int fault) => _overturningCaught[fault]!;

    /// <summary>The faults that may keep one check from catching a fault that is caught alone, of that check for which they are fewest; rising.</summary>
    public int[] SmallestGuard(int fault) => _smallestGuard[fault]!;

    /// <summary>For a fault that is not caught alone, the checks that others may make catch it together, with those others.</summary>
    public IReadOnlyList<(int Check, int[] Faults)> CatchingWith(int fault) => _overturningUncaught[fault]!;

    /// <summary>The others that may make one of these checks catch such a fault together with it, rising.</summary>
    public int[] CatchingWith(int fault, int check) => _overturningUncaught[fault]![_touched[fault].BinarySearch(check)].Faults;

    private void Screen(int fault, IFaultInteractions interactions)
    {
        int[] catching = [.. _dictionary.ChecksThatCatch(fault).Where(check => Array.BinarySearch(_checks, check) >= 0).Take(MostGuards)];
        var overturning = OverturningAll(fault, catching, interactions, thoroughly: false);
        if (overturning?.Length == Everyone.Length)
            overturning = OverturningAll(fault, catching, interactions, thoroughly: true);
        _overturningCaught[fault] = overturning;
        if (overturning is not null)
            return;
        Span<int> alone = [fault];
        var with = new List<(int, int[])>();
        foreach (var check in _touched[fault])
            with.Add((check, interactions.Overturning(alone, check, isCaught: false) ?? Everyone));
        _overturningUncaught[fault] = [.. with];
    }

    // What may keep each of the checks from catching a fault alone; null when there is no check.
    private int[]? OverturningAll(int fault, int[] catching, IFaultInteractions interactions, bool thoroughly)
    {
        Span<int> alone = [fault];
        int[]? overturning = null;
        foreach (var check in catching)
        {
            var found = interactions.Overturning(alone, check, isCaught: true, thoroughly) ?? Everyone;
            if (_smallestGuard[fault] is not { } smallest || found.Length < smallest.Length)
                _smallestGuard[fault] = found;
            overturning = overturning is null ? found : [.. overturning.Intersect(found)];
            if (overturning.Length == 0)
                break;
        }

        return overturning;
    }
}
