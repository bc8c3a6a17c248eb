using System.Numerics;

namespace Proveout.Engine.Faults;

/// <summary>Readings and symptoms, and for each fault which of them it changes and which of those it explains, as sets of bits.</summary>
internal sealed class Evidence
{
    private const int BitsAWord = 64;

    private readonly FaultDictionary _dictionary;
    private readonly ulong[] _changed;
    private readonly ulong[] _fitting;
    private readonly ulong[] _unexplained;
    private readonly double[] _logRatio;

    public Evidence(FaultDictionary dictionary, IReadOnlyList<Reading> readings, DiagnosisRates rates)
        : this(dictionary, [.. ItemsOf(dictionary, readings, rates)], rates)
    {
    }

    private Evidence(FaultDictionary dictionary, EvidenceItem[] items, DiagnosisRates rates)
    {
        (_dictionary, Items, Rates) = (dictionary, items, rates);
        Words = (items.Length + BitsAWord - 1) / BitsAWord;
        Off = Bits(item => item.IsOff);
        Measured = Bits(item => !item.IsSymptom);
        LogSound = items.Sum(item => item.LogLikelihood(item.Sound));
        _changed = new ulong[dictionary.Faults.Count * Words];
        _fitting = new ulong[dictionary.Faults.Count * Words];
        _logRatio = new double[dictionary.Faults.Count];
        Compare();
        _unexplained = [.. _changed.Select((changed, place) => (changed & ~_fitting[place]) | (Off[place % Words] & ~changed))];
        Touching = [.. Enumerable.Range(0, dictionary.Faults.Count).Where(fault => Changed(fault).ContainsAnyExcept(0UL))];
    }

    /// <summary>The readings and symptoms that can say anything.</summary>
    public IReadOnlyList<EvidenceItem> Items { get; }

    /// <summary>How often people are wrong.</summary>
    public DiagnosisRates Rates { get; }

    /// <summary>Words of a set of items.</summary>
    public int Words { get; }

    /// <summary>The items that the sound machine cannot show.</summary>
    public ulong[] Off { get; }

    /// <summary>The items that are readings of an instrument.</summary>
    public ulong[] Measured { get; }

    /// <summary>Natural logarithm of the likelihood of all items in the sound machine.</summary>
    public double LogSound { get; }

    /// <summary>The faults that change any of the items.</summary>
    public IReadOnlyList<int> Touching { get; }

    /// <summary>True when only one of the two can be made.</summary>
    public bool AreAlternatives(int one, int other) => _dictionary.Faults[one].IsAlternativeTo(_dictionary.Faults[other]);

    /// <summary>The items that a fault changes.</summary>
    public ReadOnlySpan<ulong> Changed(int fault) => _changed.AsSpan(fault * Words, Words);

    /// <summary>The items that a fault changes and explains.</summary>
    public ReadOnlySpan<ulong> Fitting(int fault) => _fitting.AsSpan(fault * Words, Words);

    /// <summary>The items that a fault, made alone, leaves unexplained.</summary>
    public ReadOnlySpan<ulong> Unexplained(int fault) => _unexplained.AsSpan(fault * Words, Words);

    /// <summary>Natural logarithm of the likelihood under a fault alone, over that of the sound machine.</summary>
    public double LogRatio(int fault) => _logRatio[fault];

    /// <summary>Natural logarithm of the prior odds of a fault.</summary>
    public double LogOdds(int fault) => Math.Log(_dictionary.Faults[fault].Prior / (1 - _dictionary.Faults[fault].Prior));

    /// <summary>True when an item is in a set.</summary>
    public static bool Has(ReadOnlySpan<ulong> set, int item) => (set[item / BitsAWord] >> (item % BitsAWord) & 1) != 0;

    /// <summary>The items of a word of a set, rising.</summary>
    public static IEnumerable<int> ItemsIn(ulong set, int word)
    {
        for (; set != 0; set &= set - 1)
            yield return (word * BitsAWord) + BitOperations.TrailingZeroCount(set);
    }

    /// <summary>What a fault alone lets an item's check show; null when it does not change it.</summary>
    public ReadingInterval? Response(int fault, int item) =>
        Has(Changed(fault), item) ? _dictionary.ResponseOf(fault).At(Items[item].Check) : null;

    /// <summary>The same without one item.</summary>
    public Evidence Without(int item) => new(_dictionary, [.. Items.Where((_, index) => index != item)], Rates);

    // The last reading of a check counts. Readings that are off stand first, so that most pairs fail at the first word of bits.
    private static IEnumerable<EvidenceItem> ItemsOf(FaultDictionary dictionary, IReadOnlyList<Reading> readings, DiagnosisRates rates) =>
        from reading in readings
        let index = dictionary.IndexOfCheck(reading.CheckId)
        where index is not null && dictionary.Checks[index.Value].Expectation != ReadingInterval.Anything
        group reading by index.Value into ofCheck
        let check = dictionary.Checks[ofCheck.Key]
        orderby check.Expectation.Contains(ofCheck.Last().Value)
        select new EvidenceItem(ofCheck.Key, ofCheck.Last().Value, Symptom.Is(check), check.Expectation, rates);

    private ulong[] Bits(Func<EvidenceItem, bool> isIn)
    {
        var set = new ulong[Words];
        for (var item = 0; item < Items.Count; item++)
            if (isIn(Items[item]))
                set[item / BitsAWord] |= 1UL << (item % BitsAWord);
        return set;
    }

    private void Compare()
    {
        double[] sound = [.. Items.Select(item => item.LogLikelihood(item.Sound))];
        var itemOf = new int[_dictionary.Checks.Count];
        Array.Fill(itemOf, -1);
        for (var item = 0; item < Items.Count; item++)
            itemOf[Items[item].Check] = item;
        foreach (var (fault, response) in _dictionary.ResponsesOf([.. Enumerable.Range(0, _dictionary.Faults.Count)]).Index())
            for (var place = 0; place < response.Checks.Length; place++)
                if (itemOf[response.Checks[place]] is >= 0 and var item)
                    Compare(fault, item, response.Intervals[place], sound[item]);
    }

    private void Compare(int fault, int item, ReadingInterval shown, double sound)
    {
        var word = (fault * Words) + (item / BitsAWord);
        var bit = 1UL << (item % BitsAWord);
        _changed[word] |= bit;
        if (shown.Contains(Items[item].Value))
            _fitting[word] |= bit;
        _logRatio[fault] += Items[item].LogLikelihood(shown) - sound;
    }
}
