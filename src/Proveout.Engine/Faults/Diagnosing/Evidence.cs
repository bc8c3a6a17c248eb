namespace Proveout.Engine.Faults;

/// <summary>Readings, and the faults that might have a part in them.</summary>
internal sealed class Evidence
{
    private readonly FaultDictionary _dictionary;
    private readonly (int Check, double Value)[] _items;

    public Evidence(FaultDictionary dictionary, IReadOnlyList<Reading> readings)
    {
        _dictionary = dictionary;
        _items =
        [
            .. from reading in readings
               let check = dictionary.IndexOfCheck(reading.CheckId)
               where check is not null && dictionary.Checks[check.Value].Expectation != ReadingInterval.Anything
               select (check.Value, reading.Value),
        ];
        Failed = [.. Enumerable.Range(0, _items.Length).Where(item => !Good(item).Contains(_items[item].Value))];
        Partners = [.. Enumerable.Range(0, dictionary.Faults.Count).Where(IsPossiblePartner)];
    }

    /// <summary>Indices of the readings that a sound machine cannot show.</summary>
    public IReadOnlyList<int> Failed { get; }

    /// <summary>Faults that explain some failed reading and that no passed reading speaks against.</summary>
    public IReadOnlyList<int> Partners { get; }

    /// <summary>Identifier of the check of a reading.</summary>
    public string CheckOf(int item) => _dictionary.Checks[_items[item].Check].Id;

    /// <summary>Prior rate of a fault.</summary>
    public double Prior(int fault) => _dictionary.Faults[fault].Prior;

    /// <summary>True when the fault alone may show the reading.</summary>
    public bool Explains(int fault, int item) => Response(fault, item) is { } interval && interval.Contains(_items[item].Value);

    /// <summary>True when the faults together may show the reading.</summary>
    public bool Allows(ReadOnlySpan<int> faults, int item) => Together(faults, item).Contains(_items[item].Value);

    /// <summary>Likelihood of all readings under the faults together.</summary>
    public double Likelihood(ReadOnlySpan<int> faults)
    {
        var likelihood = 1.0;
        for (var item = 0; item < _items.Length && likelihood > 0; item++)
            likelihood *= ReadingLikelihood.Of(_items[item].Value, Together(faults, item));
        return likelihood;
    }

    private ReadingInterval Together(ReadOnlySpan<int> faults, int item)
    {
        ReadingInterval? only = null;
        foreach (var fault in faults)
            if (Response(fault, item) is { } interval)
            {
                if (only is not null)
                    return ReadingInterval.Anything;
                only = interval;
            }

        return only ?? Good(item);
    }

    private ReadingInterval? Response(int fault, int item) => _dictionary.ResponseOf(fault).At(_items[item].Check);

    private ReadingInterval Good(int item) => _dictionary.Checks[_items[item].Check].Expectation;

    private bool IsPossiblePartner(int fault)
    {
        var explains = false;
        for (var item = 0; item < _items.Length; item++)
            if (Response(fault, item) is { } interval)
            {
                var passed = Good(item).Contains(_items[item].Value);
                if (passed && !interval.Contains(_items[item].Value))
                    return false;
                explains |= !passed && interval.Contains(_items[item].Value);
            }

        return explains;
    }
}
