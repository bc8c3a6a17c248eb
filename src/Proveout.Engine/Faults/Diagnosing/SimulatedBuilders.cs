namespace Proveout.Engine.Faults;

/// <summary>Builders who make mistakes at random and find them by always reading the check worth most: measures how good a diagnosis is on a machine.</summary>
/// <remarks>
/// While every reading passes, which check is worth most hardly depends on where in its interval a reading lies; so that order is worked out
/// once, with readings in the middle, and every builder follows it until a reading is off.
/// </remarks>
public sealed class SimulatedBuilders
{
    private readonly FaultDictionary _dictionary;
    private readonly Func<IFaultSimulator> _builds;
    private readonly Func<IFaultSimulator>? _diagnoses;
    private readonly int[] _catchable;

    /// <summary>Works out the order of checks while all pass.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="builds">Makes a simulator of what several mistakes show together, for each builder its own.</param>
    /// <param name="diagnoses">Makes the simulator that the diagnosis may use; null when it has to do without.</param>
    public SimulatedBuilders(FaultDictionary dictionary, Func<IFaultSimulator> builds, Func<IFaultSimulator>? diagnoses = null)
    {
        (_dictionary, _builds, _diagnoses) = (dictionary, builds, diagnoses);
        _catchable = [.. Enumerable.Range(0, dictionary.Faults.Count).Where(fault => dictionary.ChecksThatCatch(fault).Any())];
        Groups = FaultGroups.Of(dictionary);
        WhileAllPass = SoundWalk.Of(dictionary);
    }

    /// <summary>The checks that a sound machine is asked, in order.</summary>
    public IReadOnlyList<int> WhileAllPass { get; }

    /// <summary>The faults that no check tells apart, by group.</summary>
    internal FaultGroups Groups { get; }

    /// <summary>Entropy of which group of mistakes a builder makes who makes one that some check surely catches, in bits.</summary>
    public double PriorBits => FaultGroups.Entropy(
        _catchable.GroupBy(fault => Groups.Of(fault)).Select(group => group.Sum(fault => _dictionary.Faults[fault].Prior)));

    /// <summary>A builder who makes some mistakes, drawn by their prior rates from those that a check surely catches.</summary>
    /// <param name="mistakes">How many mistakes, one or two.</param>
    /// <param name="seed">Seed of the draw; equal seeds give equal trials.</param>
    public BuilderTrial Try(int mistakes, int seed)
    {
        var random = new Random(seed);
        var built = _builds();
        int[] made;
        do
            made = [.. Enumerable.Range(0, mistakes).Select(_ => Draw(random)).Distinct().Order()];
        while (made.Length < mistakes || (mistakes > 1 && built.Shown(made, 0) is null));
        return new BuilderWalk(_dictionary, built, _diagnoses?.Invoke(), this, made, random).Run();
    }

    private int Draw(Random random)
    {
        var left = random.NextDouble() * _catchable.Sum(fault => _dictionary.Faults[fault].Prior);
        foreach (var fault in _catchable)
            if ((left -= _dictionary.Faults[fault].Prior) <= 0)
                return fault;
        return _catchable[^1];
    }
}
