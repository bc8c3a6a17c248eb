namespace Proveout.Engine.Faults;

/// <summary>Ranks the faults that explain all readings so far.</summary>
/// <remarks>
/// Bayes' rule over single faults: prior rate times the likelihood of every reading. When no single fault explains them, over pairs: where
/// only one of the two changes a check, its interval holds; where both do, the reading says nothing.
/// </remarks>
public static class Diagnosis
{
    private const int MostPairPartners = 300;

    /// <summary>Explanations of the readings, most likely first; empty when every reading is that of a sound machine, or nothing explains them.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="readings">The last reading of each check done.</param>
    public static IReadOnlyList<Hypothesis> Explain(FaultDictionary dictionary, IReadOnlyList<Reading> readings)
    {
        var evidence = Evidence(dictionary, readings);
        if (evidence.All(item => dictionary.Checks[item.Check].Judge(item.Value) != Verdict.Fail))
            return [];
        var singles = Singles(dictionary, evidence);
        return Ranked(singles.Count > 0 ? singles : Pairs(dictionary, evidence));
    }

    private static (int Check, double Value)[] Evidence(FaultDictionary dictionary, IReadOnlyList<Reading> readings) =>
    [
        .. from reading in readings
           let check = dictionary.IndexOfCheck(reading.CheckId)
           where check is not null && dictionary.Checks[check.Value].Expectation != ReadingInterval.Anything
           select (check.Value, reading.Value),
    ];

    private static List<(int[] Faults, double Weight)> Singles(FaultDictionary dictionary, (int Check, double Value)[] evidence)
    {
        List<(int[], double)> found = [];
        for (var fault = 0; fault < dictionary.Faults.Count; fault++)
        {
            var weight = dictionary.Faults[fault].Prior;
            foreach (var (check, value) in evidence)
                weight *= ReadingLikelihood.Of(value, dictionary.IntervalOf(fault, check));
            if (weight > 0)
                found.Add(([fault], weight));
        }

        return found;
    }

    private static List<(int[] Faults, double Weight)> Pairs(FaultDictionary dictionary, (int Check, double Value)[] evidence)
    {
        var partners = Enumerable.Range(0, dictionary.Faults.Count)
            .Where(fault => IsPossiblePartner(dictionary, fault, evidence))
            .OrderByDescending(fault => dictionary.Faults[fault].Prior)
            .Take(MostPairPartners)
            .ToArray();
        List<(int[], double)> found = [];
        for (var one = 0; one < partners.Length; one++)
            for (var two = one + 1; two < partners.Length; two++)
                if (PairWeight(dictionary, partners[one], partners[two], evidence) is > 0 and var weight)
                    found.Add(([partners[one], partners[two]], weight));
        return found;
    }

    // It explains a reading that the sound machine cannot show, and no reading of a sound machine speaks against it.
    private static bool IsPossiblePartner(FaultDictionary dictionary, int fault, (int Check, double Value)[] evidence)
    {
        var response = dictionary.ResponseOf(fault);
        var explains = false;
        foreach (var (check, value) in evidence)
            if (response.At(check) is { } interval)
            {
                var failed = !dictionary.Checks[check].Expectation.Contains(value);
                explains |= failed && interval.Contains(value);
                if (!failed && !interval.Contains(value))
                    return false;
            }

        return explains;
    }

    private static double PairWeight(FaultDictionary dictionary, int one, int two, (int Check, double Value)[] evidence)
    {
        var weight = dictionary.Faults[one].Prior * dictionary.Faults[two].Prior;
        foreach (var (check, value) in evidence)
        {
            var ofOne = dictionary.ResponseOf(one).At(check);
            var ofTwo = dictionary.ResponseOf(two).At(check);
            var interval = ofOne is not null && ofTwo is not null ? ReadingInterval.Anything : ofOne ?? ofTwo ?? dictionary.Checks[check].Expectation;
            weight *= ReadingLikelihood.Of(value, interval);
            if (weight <= 0)
                return 0;
        }

        return weight;
    }

    private static IReadOnlyList<Hypothesis> Ranked(List<(int[] Faults, double Weight)> found)
    {
        var total = found.Sum(item => item.Weight);
        return [.. found.OrderByDescending(item => item.Weight).Select(item => new Hypothesis(item.Faults, item.Weight / total))];
    }
}
